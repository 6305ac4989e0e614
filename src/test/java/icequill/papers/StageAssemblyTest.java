package icequill.papers;

import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.RatesFixture;
import icequill.document.Invoice.AdvanceBill;
import icequill.document.InvoiceLine;
import icequill.document.RepairQuote;
import icequill.document.StageInvoice;
import icequill.document.Totals;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.TaxBasis;
import icequill.party.Wording;
import icequill.problem.Validated;
import icequill.render.InvoiceFixture;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.tax.Advances;
import icequill.tax.Advances.Deposits;
import icequill.tax.Advances.Retainages;
import icequill.tax.Stage;
import icequill.tax.StagedPrice;
import icequill.tax.TaxPlace;
import icequill.tax.TaxRate;
import icequill.tax.TaxTotal;
import icequill.tax.TaxTotals;
import icequill.tax.Taxable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Invoices of deposits, of parts and of what was held back, and what the invoice of the work asks for after them. */
class StageAssemblyTest {

    private static final InvoiceFixture FIXTURE = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US");

    /** 8.875 % of 2,000.00 is 177.50; 30 % are 600.00 without tax; 2,177.50 - 600.00 = 1,577.50. */
    @Test
    void deposit_ofASalesTax_isTakenOffWithoutTax() {
        Totals whole = totals("2000", "8.875", new Advances(Deposits.AT_FINAL, Retainages.WITH_PROGRESS));
        StageInvoice deposit = invoice(quote(whole, price -> price.deposit(Percent.of("30"))), 1, List.of());

        Totals left = left(whole, List.of(deposit)).orElseThrow();

        assertThat(sums(deposit.totals())).isEqualTo("600.00 0.00 600.00");
        assertThat(sums(left)).isEqualTo("1400.00 177.50 1577.50");
        assertThat(Amounts.plain(left.taxes().getFirst().base())).isEqualTo("2000.00");
    }

    /** 19 % of 600.00 is 114.00, of 2,000.00 380.00; 2,380.00 - 714.00 = 1,666.00. */
    @Test
    void deposit_ofAVat_isTakenOffWithItsTax() {
        Totals whole = totals("2000", "19", new Advances(Deposits.AT_DEPOSIT, Retainages.WITH_PROGRESS));
        StageInvoice deposit = invoice(quote(whole, price -> price.deposit(Percent.of("30"))), 1, List.of());

        Totals left = left(whole, List.of(deposit)).orElseThrow();

        assertThat(sums(deposit.totals())).isEqualTo("600.00 114.00 714.00");
        assertThat(sums(left)).isEqualTo("1400.00 266.00 1666.00");
        assertThat(Amounts.plain(left.taxes().getFirst().base())).isEqualTo("1400.00");
    }

    /**
     * 1,333.33, 1,333.33, 666.67 less a tenth, with 7 % of all of it: 1,293.33, 1,293.33, 646.67; the work leaves nothing, and
     * 133.33 + 133.33 + 66.67 = 333.33 are released.
     */
    @Test
    void parts_heldBackTaxedWithTheirPart_leaveNothingButTheRelease() {
        Totals whole = totals("3333.33", "7", new Advances(Deposits.AT_FINAL, Retainages.WITH_PROGRESS));
        List<StageInvoice> parts = parts(whole);

        assertThat(parts).extracting(part -> sums(part.totals())).containsExactly("1200.00 93.33 1293.33",
                "1200.00 93.33 1293.33", "600.00 46.67 646.67");
        assertThat(sums(left(whole, parts).orElseThrow())).isEqualTo("0.00 0.00 0.00");
        assertThat(sums(release(whole, parts).totals())).isEqualTo("333.33 0.00 333.33");
        // What the last part would have been is asked for by the invoice of the work: 666.67 + 46.67.
        assertThat(sums(left(whole, parts.subList(0, 2)).orElseThrow())).isEqualTo("666.67 46.67 713.34");
        assertThat(sums(release(whole, parts.subList(0, 2)).totals())).isEqualTo("266.66 0.00 266.66");
    }

    /** 7 % of 1,200.00 is 84.00, of 600.00 42.00; 233.33 - 210.00 = 23.33 come with the 333.33. */
    @Test
    void parts_heldBackTaxedWhenReleased_waitWithTheirTax() {
        Totals whole = totals("3333.33", "7", new Advances(Deposits.AT_FINAL, Retainages.AT_RELEASE));
        List<StageInvoice> parts = parts(whole);

        assertThat(parts).extracting(part -> sums(part.totals())).containsExactly("1200.00 84.00 1284.00",
                "1200.00 84.00 1284.00", "600.00 42.00 642.00");
        assertThat(sums(left(whole, parts).orElseThrow())).isEqualTo("0.00 0.00 0.00");
        assertThat(sums(release(whole, parts).totals())).isEqualTo("333.33 23.33 356.66");
        // 2 x (93.33 - 84.00) wait with the two parts of which 2 x 133.33 are held back.
        assertThat(sums(release(whole, parts.subList(0, 2)).totals())).isEqualTo("266.66 18.66 285.32");
    }

    /** Each line is taxed at what the totals say of its rate, whatever is held back. */
    @Test
    void lines_addUpToTheTotals() {
        Totals whole = totals("3333.33", "7", new Advances(Deposits.AT_FINAL, Retainages.AT_RELEASE));

        for (StageInvoice part : parts(whole)) {
            assertThat(part.lines().stream().filter(line -> line.tax().isTaxed()).map(InvoiceLine::net)
                    .reduce(usd("0"), (sum, net) -> sum.add(net)))
                    .isEqualTo(part.totals().taxes().getFirst().base());
        }
    }

    /** A work of 500.00 of which 600.00 were asked for. */
    @Test
    void moreAskedForThanTheWorkComesTo_isToBeGivenBackFirst() {
        Advances advances = new Advances(Deposits.AT_FINAL, Retainages.WITH_PROGRESS);
        StageInvoice deposit = invoice(
                quote(totals("2000", "8.875", advances), price -> price.deposit(Percent.of("30"))), 1, List.of());

        assertThat(left(totals("500", "8.875", advances), List.of(deposit)).problems())
                .singleElement().satisfies(problem -> assertThat(problem.text()).isEqualTo(
                        "the work comes to 544.38, and more was invoiced before: INV-1 (a credit note for the part that is"
                                + " too much, then the invoice)"));
    }

    private static List<StageInvoice> parts(Totals whole) {
        RepairQuote quote = inThree(whole);
        List<StageInvoice> parts = new ArrayList<>();
        for (int part = 1; part <= 3; part++) {
            parts.add(invoice(quote, part, List.of()));
        }
        return parts;
    }

    private static StageInvoice release(Totals whole, List<StageInvoice> parts) {
        return invoice(inThree(whole), 4, parts);
    }

    private static RepairQuote inThree(Totals whole) {
        return quote(whole, price -> price.progress(List.of(Percent.of("40"), Percent.of("40"), Percent.of("20")),
                Percent.of("10")));
    }

    private static RepairQuote quote(Totals whole, Function<StagedPrice, List<Stage>> parts) {
        return FIXTURE.repairQuote(whole,
                parts.apply(new StagedPrice(whole.net(), whole.taxes(), whole.taxPlace().advances())));
    }

    private static StageInvoice invoice(RepairQuote quote, int part, List<StageInvoice> holding) {
        return new StageAssembly(quote, "Q-7", RatesFixture.site()).invoice(part, holding, new PaperOptions(
                Optional.of("INV-" + part), LocalDate.of(2026, 6, 2), Optional.empty(), Extras.NONE)).orElseThrow();
    }

    private static Validated<Totals> left(Totals whole, List<StageInvoice> parts) {
        List<AdvanceBill> bills = parts.stream().map(part -> InvoiceAssembly.before(part, List.of())).toList();
        return new AdvanceAssembly(List.of(), whole, bills).left();
    }

    private static Totals totals(String net, String percent, Advances advances) {
        TaxRate rate = new TaxRate("rate", TaxRate.Category.S,
                List.of(new TaxRate.Component(Wording.same("state"), Percent.of(percent), TaxRate.Levy.STATE,
                        Optional.empty(), Optional.empty())),
                Optional.empty());
        TaxTotal tax = TaxTotals.of(List.of(new Taxable(rate, usd(net))), TaxBasis.INVOICE, RatesFixture.USD)
                .getFirst();
        TaxPlace like = FIXTURE.invoice().totals().taxPlace();
        return new Totals(usd(net), Optional.empty(), usd(net), new TaxPlace(like.id(), like.name(), like.regime(),
                like.state(), like.rules(), Optional.of(advances), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), like.place()), List.of(tax), tax.tax(), usd(net).add(tax.tax()));
    }

    private static String sums(Totals totals) {
        return Amounts.plain(totals.net()) + " " + Amounts.plain(totals.tax()) + " " + Amounts.plain(totals.gross());
    }
}

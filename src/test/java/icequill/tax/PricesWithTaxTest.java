package icequill.tax;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.site;
import static icequill.VisitBuilder.visit;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.RatesFixture;
import icequill.VisitBuilder;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.Certificate;
import icequill.party.Customer;
import icequill.party.TaxBasis;
import icequill.party.Wording;
import icequill.pricer.PricedLine;
import icequill.pricer.Pricer;
import icequill.problem.Place;
import icequill.tax.TaxPlace.Regime;
import icequill.tax.TaxPlace.Rule;
import icequill.tax.TaxRate.Category;
import icequill.tax.TaxTotal.ComponentTax;
import icequill.work.ChargeClass;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prices that are shown with tax: net = gross / (1 + rate), tax = gross - net, so that a paper comes to what was shown. */
class PricesWithTaxTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 13);
    private static final TaxRate SALES = rate("4", "4.5", "0.375");

    /** 52.00 / 1.08875 = 47.7612; 150.00 / 1.08875 = 137.7727, of which 90.01 is the hour; 12.23 is shared 5.512 : 6.201 : 0.517. */
    @Test
    void salesTax_isTakenOutOfWhatWasShown() {
        TaxedVisit taxed = tax(hour(), sales(SALES), TaxBasis.INVOICE, RatesFixture.customer());

        assertThat(nets(taxed)).containsExactly("47.76", "90.01");
        assertThat(Amounts.plain(taxed.priced().net())).isEqualTo("137.77");
        assertThat(Amounts.plain(taxed.tax())).isEqualTo("12.23");
        assertThat(Amounts.plain(taxed.gross())).isEqualTo("150.00");
        assertThat(taxed.totals().getFirst().components()).extracting(ComponentTax::amount)
                .extracting(Amounts::plain).containsExactly("5.51", "6.20", "0.52");
        assertThat(taxed.totals().getFirst().how().text(USD)).isEqualTo("150.00 USD - 137.77 USD = 12.23");
        assertThat(taxed.priced().lines().get(1).how().text(USD)).isEqualTo(
                "round((52.00 USD + round(60 min x 98.00 USD/h / 60 min/h; line; 2)) / 108.875 %; before-tax; 2)"
                        + " - 47.76 USD = 90.01");
        assertThat(taxed.remarks()).extracting(Phrase::key).containsExactly("remark.prices-include-tax");
    }

    /** 52.00 / 1.19 = 43.697, 150.00 / 1.19 = 126.050; 52.00 / 1.07 = 48.598, 150.00 / 1.07 = 140.187. */
    @ParameterizedTest(name = "{0} %")
    @CsvSource({"19, 43.70, 82.35, 23.95", "7, 48.60, 91.59, 9.81"})
    void vat_isTakenOutOfWhatWasShown(String percent, String call, String labor, String vat) {
        TaxedVisit taxed = tax(hour(), place(Regime.VAT, rate(percent)), TaxBasis.ITEM, RatesFixture.customer());

        assertThat(nets(taxed)).containsExactly(call, labor);
        assertThat(Amounts.plain(taxed.tax())).isEqualTo(vat);
        assertThat(Amounts.plain(taxed.gross())).isEqualTo("150.00");
    }

    /** At 8.25 %: 52.00 comes to 48.0370, 98.00 to 90.5312, a valve of 125.50 to 115.9353; all of 275.50 to 254.5035. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"ITEM, 115.94, 254.51, 20.99", "INVOICE, 115.93, 254.50, 21.00"})
    void basis_byLineEachAlone_byInvoiceTogether(TaxBasis basis, String valve, String net, String due) {
        TaxedVisit taxed = tax(hour().material("valve", "1"), sales(rate("8.25")), basis, RatesFixture.customer());

        assertThat(nets(taxed)).containsExactly("48.04", "90.53", valve);
        assertThat(Amounts.plain(taxed.priced().net())).isEqualTo(net);
        assertThat(Amounts.plain(taxed.tax())).isEqualTo(due);
        assertThat(Amounts.plain(taxed.gross())).isEqualTo("275.50");
    }

    /** 5 % off 150.00 is 7.50 with tax: 142.50 / 1.08875 = 130.8840, and 7.50 / 1.08875 = 6.8886. */
    @Test
    void documentDiscount_isTakenOffWhatWasShown() {
        TaxedVisit taxed = tax(hour().documentDiscount("five-percent"), sales(SALES), TaxBasis.INVOICE,
                RatesFixture.customer());

        assertThat(Amounts.plain(taxed.priced().discount().orElseThrow().amount())).isEqualTo("6.89");
        assertThat(Amounts.plain(taxed.priced().net())).isEqualTo("130.88");
        assertThat(Amounts.plain(taxed.tax())).isEqualTo("11.62");
        assertThat(Amounts.plain(taxed.gross())).isEqualTo("142.50");
        assertThat(taxed.priced().lines()).allSatisfy(line -> assertThat(HowReader.evaluate(line.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(line.net())));
        assertThat(HowReader.evaluate(taxed.priced().discount().orElseThrow().how().text(USD)))
                .isEqualByComparingTo("6.89");
    }

    @Test
    void certificate_freesOfTheTaxThatIsInThePrice() {
        Customer plain = RatesFixture.customer();
        Customer free = new Customer(plain.name(), plain.language(), plain.billTo(), plain.vendorNumber(),
                plain.paymentDays(), true, List.of(new Certificate(Certificate.Kind.EXEMPT, "E-1", "NY", "charity",
                        DAY.minusYears(1), Optional.empty(), Place.NOWHERE)),
                plain.accepted(), plain.contacts(), plain.notes(), plain.mail());

        TaxedVisit taxed = tax(hour(), sales(SALES), TaxBasis.INVOICE, free);

        assertThat(Amounts.plain(taxed.gross())).isEqualTo("137.77");
        assertThat(taxed.tax().isZero()).isTrue();
    }

    /** Where labor is taxed only with parts, no tax is in its price without them. */
    @Test
    void partsOnVisit_decideWhatIsInThePriceOfLabor() {
        TaxPlace place = place(Regime.SALES_TAX, SALES, Taxability.TAXABLE_IF_PARTS_ON_VISIT);

        TaxedVisit without = tax(hour(), place, TaxBasis.INVOICE, RatesFixture.customer());
        TaxedVisit with = tax(hour().material("valve", "1"), place, TaxBasis.INVOICE, RatesFixture.customer());

        assertThat(nets(without)).containsExactly("52.00", "98.00");
        assertThat(Amounts.plain(with.gross())).isEqualTo("275.50");
        // 275.50 / 1.08875 = 253.0425
        assertThat(Amounts.plain(with.tax())).isEqualTo("22.46");
    }

    /** 95.87 / 1.19 = 80.563; 19 % of 80.56 is 15.3064, a cent less than 95.87 - 80.56: what was shown decides. */
    @Test
    void whatWasShown_decidesTheLastCent() {
        TaxRate rate = rate("19");
        TaxTotal total = TaxTotals.of(List.of(
                new Taxable(rate, RatesFixture.usd("80.56"), Optional.of(RatesFixture.usd("95.87"))),
                new Taxable(rate, RatesFixture.usd("10.00"))), TaxBasis.INVOICE, USD).getFirst();

        assertThat(Amounts.plain(total.tax())).isEqualTo("17.21");
        assertThat(HowReader.evaluate(total.how().text(USD))).isEqualByComparingTo("17.21");
    }

    private static VisitBuilder hour() {
        return visit().lead("2026-05-13T10:00", "2026-05-13T11:00");
    }

    private static TaxedVisit tax(VisitBuilder builder, TaxPlace place, TaxBasis basis, Customer customer) {
        return TaxCalculator.tax(
                Pricer.price(builder.build(), site(), place.shown(rates(), basis)).orElseThrow(), place, basis,
                customer, DAY);
    }

    private static List<String> nets(TaxedVisit taxed) {
        return taxed.priced().lines().stream().map(PricedLine::net).map(Amounts::plain).toList();
    }

    private static TaxPlace sales(TaxRate rate) {
        return place(Regime.SALES_TAX, rate);
    }

    private static TaxPlace place(Regime regime, TaxRate rate) {
        return place(regime, rate, Taxability.TAXABLE);
    }

    /** Parts are taxed in any case. */
    private static TaxPlace place(Regime regime, TaxRate rate, Taxability others) {
        return new TaxPlace("alder", Wording.same("Alder"), regime, "NY", Arrays.stream(ChargeClass.values())
                .collect(Collectors.toMap(Function.identity(),
                        on -> new Rule(on == ChargeClass.PARTS ? Taxability.TAXABLE : others, rate))),
                Optional.empty(), Optional.empty(), Optional.of(true), Optional.empty(), Optional.empty(),
                Place.NOWHERE);
    }

    private static TaxRate rate(String... percents) {
        return new TaxRate("all", Category.S, Arrays.stream(percents)
                .map(percent -> new TaxRate.Component(Wording.same(percent), Percent.of(percent), TaxRate.Levy.STATE,
                        Optional.empty(), Optional.empty()))
                .toList(), Optional.empty());
    }
}

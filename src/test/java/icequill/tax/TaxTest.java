package icequill.tax;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import icequill.explain.HowReader;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.TaxBasis;
import icequill.party.Wording;
import icequill.tax.TaxRate.Category;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TaxTest {

    /**
     * Streamlined Sales and Use Tax Agreement, section 324 (as enacted in R.I. Gen. Laws 44-18.1-25): carry to the third
     * decimal, round up above four. The rows guard against half-even and against rounding twice.
     */
    @ParameterizedTest(name = "{2}")
    @CsvSource({"19.99, 6.35, 1.27", "100.00, 8.875, 8.88", "0.23, 6.35, 0.01", "0.35, 7, 0.02", "30.00, 6.35, 1.91",
            "0.08, 6.25, 0.01", "150.00, 8.75, 13.13"})
    void of_oneAmount_roundedHalfUpOnce(String base, String rate, String tax) {
        TaxTotal total = TaxTotals.of(List.of(new Taxable(rate(rate), usd(base))), TaxBasis.INVOICE, USD).getFirst();

        assertThat(Amounts.plain(total.tax())).isEqualTo(tax);
        assertThat(HowReader.evaluate(total.how().text(USD))).isEqualByComparingTo(tax);
    }

    /** The same section lets the seller choose the item or the invoice as the basis. */
    @ParameterizedTest(name = "{0} x {1} at {2} %")
    @CsvSource({"3, 1.10, 7, 0.24, 0.23", "10, 0.49, 7.25, 0.40, 0.36"})
    void of_severalItems_byItemOrByInvoice(int count, String each, String rate, String byItem, String byInvoice) {
        List<Taxable> items = Collections.nCopies(count, new Taxable(rate(rate), usd(each)));

        assertThat(Amounts.plain(TaxTotals.of(items, TaxBasis.ITEM, USD).getFirst().tax())).isEqualTo(byItem);
        assertThat(Amounts.plain(TaxTotals.of(items, TaxBasis.INVOICE, USD).getFirst().tax())).isEqualTo(byInvoice);
    }

    @Test
    void of_componentsOfOneRate_addUpByLargestRemainder() {
        // 87.25 less its share of 3.45; 4 + 4.5 + 0.375 %
        TaxTotal total = TaxTotals
                .of(List.of(new Taxable(rate("4", "4.5", "0.375"), usd("83.80"))), TaxBasis.INVOICE, USD)
                .getFirst();

        assertThat(Amounts.plain(total.tax())).isEqualTo("7.44");
        assertThat(total.components()).extracting(part -> Amounts.plain(part.amount())).containsExactly("3.35", "3.77",
                "0.32");
        assertThat(total.components()).allSatisfy(part -> assertThat(HowReader.evaluate(part.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(part.amount())));
    }

    @Test
    void of_zeroRatedVat_baseWithoutTax() {
        TaxRate exempt = new TaxRate("exempt", Category.E, List.of(), Optional.of(Wording.same("Art. 132")));

        TaxTotal total = TaxTotals.of(List.of(new Taxable(exempt, usd("25"))), TaxBasis.INVOICE, USD).getFirst();

        assertThat(Amounts.plain(total.base())).isEqualTo("25.00");
        assertThat(total.tax().isZero()).isTrue();
    }

    @Test
    void of_taxedAtZeroPercent_componentsWithoutTax() {
        TaxTotal total = TaxTotals.of(List.of(new Taxable(rate("0", "0"), usd("25"))), TaxBasis.INVOICE, USD)
                .getFirst();

        assertThat(total.components()).extracting(part -> Amounts.plain(part.amount())).containsExactly("0.00", "0.00");
    }

    /** A credit carries the original's rate; the credit that completes the base takes what tax is left. */
    @Test
    void further_twoHalves_lastTakesWhatIsLeft() {
        TaxTotal original = TaxTotals.of(List.of(new Taxable(rate("8.75"), usd("150"))), TaxBasis.INVOICE, USD)
                .getFirst();

        assertThat(credited(original, TaxBasis.INVOICE, "75", "75")).extracting(TaxTest::taxes).containsExactly(
                List.of("6.56", "6.56"), List.of("6.57", "6.57"));
        TaxCredit half = new TaxCredit(original, credited(original, TaxBasis.INVOICE, "75"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> half.further(List.of(part("75.01")), TaxBasis.INVOICE));
    }

    /** Three lines of 1.10 at 6 + 1 %: 0.23 in all, 0.20 and 0.03; each note of 1.10 is 0.077, hence 0.08, but the last. */
    @Test
    void further_lineByLine_everyAuthorityEndsAtZero() {
        TaxTotal original = TaxTotals.of(Collections.nCopies(3, new Taxable(rate("6", "1"), usd("1.10"))),
                TaxBasis.INVOICE, USD).getFirst();

        List<TaxTotal> notes = credited(original, TaxBasis.INVOICE, "1.10", "1.10", "1.10");

        assertThat(notes).extracting(TaxTest::taxes).containsExactly(List.of("0.08", "0.07", "0.01"),
                List.of("0.08", "0.07", "0.01"), List.of("0.07", "0.06", "0.01"));
        assertThat(notes).allSatisfy(note -> assertThat(HowReader.evaluate(note.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(note.tax())));
        assertThat(notes.getLast().components()).allSatisfy(part -> assertThat(
                HowReader.evaluate(part.how().text(USD))).isEqualByComparingTo(Amounts.number(part.amount())));
    }

    /** Taxed line by line: 3 x 0.08 = 0.24, and what two lines had together goes back with both: 0.16. */
    @Test
    void further_taxedByItem_eachLineGivesItsOwnTaxBack() {
        TaxTotal original = TaxTotals.of(Collections.nCopies(3, new Taxable(rate("6", "1"), usd("1.10"))),
                TaxBasis.ITEM, USD).getFirst();
        TaxCredit none = new TaxCredit(original, List.of());
        TaxTotal two = none.further(List.of(part("1.10"), part("1.10")), TaxBasis.ITEM);
        TaxTotal third = new TaxCredit(original, List.of(two)).further(List.of(part("1.10")), TaxBasis.ITEM);

        assertThat(taxes(two)).containsExactly("0.16", "0.14", "0.02");
        assertThat(taxes(third)).containsExactly("0.08", "0.07", "0.01");
    }

    /**
     * Six lines of 0.50 at 4 + 4.5 + 0.375 %: 0.27 in all (0.12 + 0.14 + 0.01). Each is 0.044375, hence 0.04, by the rates
     * 0.02 + 0.02 + 0.00; the last takes 0.07: 0.02 + 0.04 + 0.01.
     */
    @Test
    void further_smallParts_theLastSettlesEachAuthority() {
        TaxTotal original = TaxTotals.of(List.of(new Taxable(rate("4", "4.5", "0.375"), usd("3.00"))),
                TaxBasis.INVOICE, USD).getFirst();

        List<TaxTotal> notes = credited(original, TaxBasis.INVOICE, "0.50", "0.50", "0.50", "0.50", "0.50", "0.50");

        assertThat(taxes(original)).containsExactly("0.27", "0.12", "0.14", "0.01");
        assertThat(taxes(notes.getFirst())).containsExactly("0.04", "0.02", "0.02", "0.00");
        assertThat(taxes(notes.getLast())).containsExactly("0.07", "0.02", "0.04", "0.01");
    }

    @Test
    void further_manySmallCredits_neverMoreThanTheOriginal() {
        // 1.10 at 7 % is 0.077, hence 0.08; each credit of 0.10 is 0.007, hence 0.01, so the tax is used up early
        TaxTotal original = TaxTotals.of(List.of(new Taxable(rate("6", "1"), usd("1.10"))), TaxBasis.INVOICE, USD)
                .getFirst();

        List<TaxTotal> notes = credited(original, TaxBasis.INVOICE,
                Collections.nCopies(11, "0.10").toArray(String[]::new));

        assertThat(notes).extracting(note -> Amounts.plain(note.tax())).containsExactly("0.01", "0.01", "0.01", "0.01",
                "0.01", "0.01", "0.01", "0.01", "0.00", "0.00", "0.00");
        assertThat(IntStream.range(0, 2).mapToObj(i -> Amounts.sum(notes.stream()
                .map(note -> note.components().get(i).amount()).toList(), USD))).extracting(Amounts::plain)
                .containsExactly("0.07", "0.01");
    }

    private static List<TaxTotal> credited(TaxTotal original, TaxBasis basis, String... bases) {
        List<TaxTotal> notes = new ArrayList<>();
        for (String base : bases) {
            notes.add(new TaxCredit(original, notes).further(List.of(part(base)), basis));
        }
        return notes;
    }

    /** The whole, then its components. */
    private static List<String> taxes(TaxTotal total) {
        return Stream.concat(Stream.of(total.tax()), total.components().stream().map(TaxTotal.ComponentTax::amount))
                .map(Amounts::plain).toList();
    }

    @Test
    void rate_taxedWithoutComponents_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TaxRate("none", Category.S, List.of(), Optional.empty()));
    }

    /**
     * Florida's state tax of 6 % and a county's surtax of 1 % on the first 5,000.00 of an item (F.S. 212.05, 212.054(2)(b)2, from memory):
     * of 6,200.00 they are 372.00 and 50.00; of 6,200.00 and 300.00 together 390.00 and 53.00; line by line the same.
     */
    @ParameterizedTest
    @CsvSource({"6200, 422.00, 372.00, 50.00, 5000.00", "5000, 350.00, 300.00, 50.00, 5000.00",
            "6200 300, 443.00, 390.00, 53.00, 5300.00",
            // What is taken back gives back as much as it bore.
            "6000 -6000, 0.00, 0.00, 0.00, 0.00"})
    void tax_capOfAComponent_perLine(String lines, String tax, String state, String county, String base) {
        List<Taxable> taxables = Arrays.stream(lines.split(" ", -1)).map(line -> new Taxable(capped(), usd(line)))
                .toList();

        for (TaxBasis basis : TaxBasis.values()) {
            TaxTotal total = TaxTotals.of(taxables, basis, USD).getFirst();
            assertThat(Amounts.plain(total.tax())).isEqualTo(tax);
            assertThat(total.components()).extracting(part -> Amounts.plain(part.amount()))
                    .containsExactly(state, county);
            assertThat(total.components().getLast().base().map(Amounts::plain)).contains(base);
            assertThat(HowReader.evaluate(total.how().text(USD))).isEqualByComparingTo(tax);
        }
    }

    /** 422.00 of 6,200.00: with half of it 211.00 go back, 186.00 and 25.00, and then the rest. */
    @Test
    void credit_ofACappedTax_inTwoHalves() {
        TaxTotal original = TaxTotals.of(List.of(new Taxable(capped(), usd("6200"))), TaxBasis.INVOICE, USD)
                .getFirst();
        TaxTotal half = new TaxCredit(original, List.of()).further(List.of(part("3100", "6200", "0")),
                TaxBasis.INVOICE);
        TaxTotal rest = new TaxCredit(original, List.of(half)).further(List.of(part("3100", "6200", "3100")),
                TaxBasis.INVOICE);

        assertThat(half.components()).extracting(part -> Amounts.plain(part.amount()))
                .containsExactly("186.00", "25.00");
        assertThat(rest.components()).extracting(part -> Amounts.plain(part.amount()))
                .containsExactly("186.00", "25.00");
        assertThat(HowReader.evaluate(half.how().text(USD))).isEqualByComparingTo("211.00");
    }

    /**
     * Of 7,500.00, 500.00 and 90.00 the county taxes 5,000.00 and the two small ones: 485.40 + 55.90. The first two give back what they
     * bore, 480.00 and 55.00; as large a part of the whole would be 541.30 x 8,000 / 8,090 = 535.28.
     */
    @ParameterizedTest
    @EnumSource(TaxBasis.class)
    void credit_ofSomeLinesUnderACap_eachGivesBackTheTaxThatItBore(TaxBasis basis) {
        TaxTotal original = TaxTotals.of(Stream.of("7500", "500", "90").map(line -> new Taxable(capped(), usd(line)))
                .toList(), basis, USD).getFirst();
        TaxTotal two = new TaxCredit(original, List.of()).further(
                List.of(part("7500", "7500", "0"), part("500", "500", "0")), basis);
        TaxTotal rest = new TaxCredit(original, List.of(two)).further(List.of(part("90", "90", "0")), basis);

        assertThat(taxes(original)).containsExactly("541.30", "485.40", "55.90");
        assertThat(taxes(two)).containsExactly("535.00", "480.00", "55.00");
        assertThat(two.components().getLast().base().map(Amounts::plain)).contains("5500.00");
        assertThat(HowReader.evaluate(two.how().text(USD))).isEqualByComparingTo("535.00");
        assertThat(taxes(rest)).containsExactly("6.30", "5.40", "0.90");
        assertThat(rest.components().getLast().base().map(Amounts::plain)).contains("90.00");
    }

    /** A third of 7,500.00 at a time, 2,500.00: the county taxes 1,666.67, then 1,666.66, then 1,666.67 of each, 5,000.00 together. */
    @Test
    void credit_ofALineUnderACapInThirds_leavesNothingOver() {
        TaxTotal original = TaxTotals.of(Stream.of("7500", "90").map(line -> new Taxable(capped(), usd(line)))
                .toList(), TaxBasis.INVOICE, USD).getFirst();
        List<TaxTotal> notes = new ArrayList<>();
        for (String before : List.of("0", "2500", "5000")) {
            notes.add(new TaxCredit(original, notes).further(List.of(part("2500", "7500", before)), TaxBasis.INVOICE));
        }

        assertThat(notes).extracting(note -> note.components().getLast().base().map(Amounts::plain).orElseThrow())
                .containsExactly("1666.67", "1666.66", "1666.67");
        assertThat(notes).extracting(TaxTest::taxes).containsOnly(List.of("166.67", "150.00", "16.67"));
        assertThat(taxes(new TaxCredit(original, notes).further(List.of(part("90", "90", "0")), TaxBasis.INVOICE)))
                .containsExactly("6.29", "5.40", "0.89");
    }

    private static TaxedPart part(String line) {
        return part(line, line, "0");
    }

    private static TaxedPart part(String base, String whole, String before) {
        return new TaxedPart(usd(base), usd(whole), usd(before));
    }

    private static TaxRate capped() {
        return new TaxRate("sales", Category.S, List.of(
                new TaxRate.Component(Wording.same("state"), Percent.of("6"), TaxRate.Levy.STATE, Optional.empty(),
                        Optional.empty()),
                new TaxRate.Component(Wording.same("county"), Percent.of("1"), TaxRate.Levy.LOCAL,
                        Optional.of(usd("5000")), Optional.empty())),
                Optional.empty());
    }

    static TaxRate rate(String... percents) {
        return new TaxRate("sales", Category.S, Arrays.stream(percents)
                .map(percent -> new TaxRate.Component(Wording.same(percent), Percent.of(percent), TaxRate.Levy.STATE,
                        Optional.empty(), Optional.empty()))
                .toList(),
                Optional.empty());
    }
}

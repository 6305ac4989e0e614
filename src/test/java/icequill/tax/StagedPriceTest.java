package icequill.tax;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.TaxBasis;
import icequill.party.Wording;
import icequill.tax.Advances.Deposits;
import icequill.tax.Advances.Retainages;
import icequill.tax.TaxRate.Category;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.money.MonetaryAmount;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Deposits, progress payments and what is held back of them, worked by hand. */
class StagedPriceTest {

    private static final Advances SALES_TAX = TaxPlace.usual(TaxPlace.Regime.SALES_TAX);
    private static final Advances VAT = TaxPlace.usual(TaxPlace.Regime.VAT);

    /** 8.875 % of 2,000.00 is 177.50; 30 % before tax is 600.00; 2,177.50 - 600.00 = 1,577.50. */
    @Test
    void deposit_taxedAtTheEnd_askedForBeforeTax() {
        List<Stage> stages = price("2000", "8.875", SALES_TAX).deposit(Percent.of("30"));

        assertThat(of(stages, Stage::net)).containsExactly("600.00", "1400.00");
        assertThat(of(stages, Stage::tax)).containsExactly("0.00", "177.50");
        assertThat(of(stages, Stage::due)).containsExactly("600.00", "1577.50");
        assertThat(stages.getFirst().how().text(USD)).isEqualTo("round(30 % x 2000.00 USD; deposit; 2) = 600.00");
        assertThat(stages.getLast().how().text(USD)).isEqualTo("2000.00 USD + 177.50 USD - 600.00 USD = 1577.50");
        assertThat(stages.getFirst().how().reasons()).extracting(Phrase::key)
                .containsExactly("reason.deposit-untaxed");
    }

    /** 19 % of 600.00 is 114.00; of 2,000.00 it is 380.00, so 266.00 are left; 2,380.00 - 714.00 = 1,666.00. */
    @Test
    void deposit_taxedWhenAskedFor_withItsTaxAndTheRestAtTheEnd() {
        List<Stage> stages = price("2000", "19", VAT).deposit(Percent.of("30"));

        assertThat(of(stages, Stage::tax)).containsExactly("114.00", "266.00");
        assertThat(of(stages, Stage::due)).containsExactly("714.00", "1666.00");
        assertThat(stages).allSatisfy(StagedPriceTest::explained);
    }

    /** By largest remainder 1,333.33, 1,333.33, 666.67; a tenth of each 133.33, 133.33, 66.67; 7 % of 3,333.33 is 233.33. */
    @Test
    void progress_heldBack_releasedAtTheEnd() {
        List<Percent> shares = List.of(Percent.of("40"), Percent.of("40"), Percent.of("20"));

        List<Stage> stages = price("3333.33", "7", SALES_TAX).progress(shares, Percent.of("10"));

        assertThat(of(stages, Stage::net)).containsExactly("1333.33", "1333.33", "666.67", "0.00");
        assertThat(of(stages, Stage::held)).containsExactly("133.33", "133.33", "66.67", "-333.33");
        assertThat(of(stages, Stage::tax)).containsExactly("93.33", "93.33", "46.67", "0.00");
        assertThat(of(stages, Stage::due)).containsExactly("1293.33", "1293.33", "646.67", "333.33");
        assertThat(stages).extracting(Stage::kind).containsExactly(Stage.Kind.PROGRESS, Stage.Kind.PROGRESS,
                Stage.Kind.PROGRESS, Stage.Kind.RELEASE);
        assertThat(stages).allSatisfy(StagedPriceTest::explained);
    }

    /** 7 % of 1,200.00, 1,200.00 and 600.00 is 84.00, 84.00 and 42.00; of 233.33 23.33 are left for the end. */
    @Test
    void progress_heldBackAndTaxedAtItsRelease_theRestOfTheTaxComesWithIt() {
        List<Percent> shares = List.of(Percent.of("40"), Percent.of("40"), Percent.of("20"));

        List<Stage> stages = price("3333.33", "7", new Advances(Deposits.AT_FINAL, Retainages.AT_RELEASE))
                .progress(shares, Percent.of("10"));

        assertThat(of(stages, Stage::tax)).containsExactly("84.00", "84.00", "42.00", "23.33");
        assertThat(of(stages, Stage::due)).containsExactly("1284.00", "1284.00", "642.00", "356.66");
    }

    /** Two rates and a part that is not taxed: 25 % of 10.01 at 19 %, of 20.02 at 7 % and of 5.00: 2.50, 5.01 and 1.25. */
    @Test
    void deposit_severalRates_eachItsOwnShare() {
        StagedPrice price = new StagedPrice(usd("35.03"), List.of(tax("a", "10.01", "19"), tax("b", "20.02", "7")),
                VAT);

        List<Stage> stages = price.deposit(Percent.of("25"));

        assertThat(of(stages, Stage::net)).containsExactly("8.76", "26.27");
        assertThat(stages.getFirst().taxes()).extracting(total -> Amounts.plain(total.base()) + " "
                + Amounts.plain(total.tax())).containsExactly("2.50 0.48", "5.01 0.35");
        assertThat(stages).allSatisfy(StagedPriceTest::explained);
    }

    /** 30 % of 66.70 is 20.01, of each 10.005; then 20.01 of 23.34 and 23.35, and 26.68 are left. */
    @Test
    void severalRates_partsAreOfTheWhole() {
        StagedPrice price = new StagedPrice(usd("66.70"), List.of(tax("a", "33.35", "19"), tax("b", "33.35", "7")),
                VAT);

        List<Stage> deposit = price.deposit(Percent.of("30"));
        List<Stage> progress = price.progress(List.of(Percent.of("30"), Percent.of("30"), Percent.of("40")),
                Percent.ZERO);

        assertThat(of(deposit, Stage::net)).containsExactly("20.01", "46.69");
        assertThat(deposit.getFirst().taxes()).extracting(total -> Amounts.plain(total.base()))
                .containsExactly("10.01", "10.00");
        assertThat(of(progress, Stage::net)).containsExactly("20.01", "20.01", "26.68");
        assertThat(progress.get(1).taxes()).extracting(total -> Amounts.plain(total.base()))
                .containsExactly("10.00", "10.01");
        assertThat(progress).allSatisfy(StagedPriceTest::explained);
    }

    /** A compressor of 100.00 that is taxed, and 20.00 given for the old one that is not: 30.00 less 6.00. */
    @Test
    void deposit_withWhatIsTakenBackUntaxed_eachByItself() {
        List<Stage> stages = new StagedPrice(usd("80"), List.of(tax("a", "100", "7")),
                new Advances(Deposits.AT_DEPOSIT, Retainages.WITH_PROGRESS)).deposit(Percent.of("30"));

        assertThat(of(stages, Stage::net)).containsExactly("24.00", "56.00");
        assertThat(of(stages, Stage::tax)).containsExactly("2.10", "4.90");
    }

    /** Each of two lines of 4,000.00 is below 5,000.00: 7 % of 3,200.00, 3,200.00 and 1,600.00. */
    @Test
    void progress_capOfAComponent_isOfEachLine() {
        List<Stage> stages = capped("4000", "4000").progress(
                List.of(Percent.of("40"), Percent.of("40"), Percent.of("20")), Percent.ZERO);

        assertThat(of(stages, Stage::tax)).containsExactly("224.00", "224.00", "112.00");
        assertThat(stages).allSatisfy(StagedPriceTest::explained);
    }

    /** One line is above it: 6 % of 8,000.00 and 1 % of 6,800.00 is 548.00; of 25 %, 120.00 + 17.00; 411.00 are left. */
    @Test
    void deposit_capOfAComponent_isOfEachLine() {
        List<Stage> stages = capped("6200", "1800").deposit(Percent.of("25"));

        assertThat(of(stages, Stage::tax)).containsExactly("137.00", "411.00");
        assertThat(stages.getFirst().taxes().getFirst().components())
                .extracting(part -> Amounts.plain(part.amount()) + " "
                        + part.base().map(Amounts::plain).orElse("all"))
                .containsExactly("120.00 all", "17.00 1700.00");
    }

    @Property(tries = 500, seed = "17")
    void deposit_andTheRest_areTheWholeToTheCent(@ForAll @IntRange(min = 1, max = 10_000_000) int one,
            @ForAll @IntRange(max = 10_000_000) int other, @ForAll @IntRange(max = 10_000) int share,
            @ForAll @IntRange(max = 2500) int rate, @ForAll boolean vat) {
        StagedPrice price = price(one, other, rate, vat ? VAT : SALES_TAX);

        whole(price, price.deposit(new Percent(BigDecimal.valueOf(share, 2))));
    }

    @Property(tries = 500, seed = "1717")
    void progress_partsAndWhatIsHeldBack_areTheWholeToTheCent(@ForAll @IntRange(min = 1, max = 10_000_000) int one,
            @ForAll @IntRange(max = 10_000_000) int other, @ForAll @IntRange(max = 2500) int rate,
            @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 16) Integer> parts,
            @ForAll @IntRange(max = 50) int retainage, @ForAll boolean atRelease) {
        StagedPrice price = price(one, other, rate, new Advances(Deposits.AT_FINAL,
                atRelease ? Retainages.AT_RELEASE : Retainages.WITH_PROGRESS));
        List<Percent> shares = new ArrayList<>(
                parts.stream().map(part -> Percent.of(String.valueOf(part))).toList());
        shares.add(Percent.of(String.valueOf(100 - parts.stream().mapToInt(Integer::intValue).sum())));

        List<Stage> stages = price.progress(shares, Percent.of(String.valueOf(retainage)));

        whole(price, stages);
        assertThat(Amounts.number(Amounts.sum(stages.stream().map(Stage::held).toList(), USD)))
                .isEqualByComparingTo(BigDecimal.ZERO);
    }

    private static void whole(StagedPrice price, List<Stage> stages) {
        MonetaryAmount tax = Amounts.sum(price.taxes().stream().map(TaxTotal::tax).toList(), USD);
        assertThat(Amounts.plain(Amounts.sum(stages.stream().map(Stage::net).toList(), USD)))
                .isEqualTo(Amounts.plain(price.net()));
        assertThat(Amounts.plain(Amounts.sum(stages.stream().map(Stage::tax).toList(), USD)))
                .isEqualTo(Amounts.plain(tax));
        assertThat(Amounts.plain(Amounts.sum(stages.stream().map(Stage::due).toList(), USD)))
                .isEqualTo(Amounts.plain(price.net().add(tax)));
        assertThat(stages).allSatisfy(StagedPriceTest::explained);
    }

    private static void explained(Stage stage) {
        assertThat(HowReader.evaluate(stage.how().text(USD))).isEqualByComparingTo(Amounts.number(stage.due()));
    }

    private static StagedPrice price(String net, String percent, Advances advances) {
        return new StagedPrice(usd(net), List.of(tax("one", net, percent)), advances);
    }

    /** Two lines at 6 %, and at 1 % on the first 5,000.00 of an item. */
    private static StagedPrice capped(String one, String other) {
        TaxRate rate = new TaxRate("capped", Category.S,
                List.of(new TaxRate.Component(Wording.same("state"), Percent.of("6"), TaxRate.Levy.STATE,
                        Optional.empty(), Optional.empty()),
                        new TaxRate.Component(Wording.same("county"), Percent.of("1"), TaxRate.Levy.LOCAL,
                                Optional.of(usd("5000")), Optional.empty())),
                Optional.empty());
        return new StagedPrice(usd(one).add(usd(other)), TaxTotals.of(
                List.of(new Taxable(rate, usd(one)), new Taxable(rate, usd(other))), TaxBasis.INVOICE, USD),
                new Advances(Deposits.AT_DEPOSIT, Retainages.WITH_PROGRESS));
    }

    /** Two rates, and three cents that are taxed at none. */
    private static StagedPrice price(int one, int other, int rate, Advances advances) {
        BigDecimal first = BigDecimal.valueOf(one, 2);
        BigDecimal second = BigDecimal.valueOf(other, 2);
        return new StagedPrice(usd(first.add(second).add(new BigDecimal("0.03")).toPlainString()),
                List.of(tax("one", first.toPlainString(), BigDecimal.valueOf(rate, 2).toPlainString()),
                        tax("other", second.toPlainString(), "7")),
                advances);
    }

    private static TaxTotal tax(String id, String base, String percent) {
        TaxRate rate = new TaxRate(id, Category.S,
                List.of(new TaxRate.Component(Wording.same(id), Percent.of(percent), TaxRate.Levy.STATE,
                        Optional.empty(), Optional.empty())),
                Optional.empty());
        return TaxTotals.of(List.of(new Taxable(rate, usd(base))), TaxBasis.INVOICE, USD).getFirst();
    }

    private static List<String> of(List<Stage> stages, Function<Stage, MonetaryAmount> what) {
        return stages.stream().map(what).map(Amounts::plain).toList();
    }
}

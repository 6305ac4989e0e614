package icequill.forecast.effects;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import icequill.explain.Figure;
import icequill.explain.HowReader;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.problem.Place;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Owning and replacing machines against published examples of engineering economy, and against what was worked out apart. */
class OwningTest {

    private static Interest interest(String percent) {
        return new Interest(Percent.of(percent));
    }

    private static double value(Figure figure) {
        return figure.exact().doubleValue();
    }

    /** Years with costs; the salvage of all but the last may be named. */
    private static Owning owning(String price, String salvage, String costs, String percent) {
        String[] left = salvage.split("/", -1);
        String[] paid = costs.split("/", -1);
        return new Owning(usd(price), IntStream.range(0, paid.length)
                .mapToObj(i -> new Owning.Year(usd(left[Math.min(i, left.length - 1)]), usd(paid[i]))).toList(),
                interest(percent));
    }

    private static List<String> equivalents(Owning owning) {
        return IntStream.rangeClosed(1, owning.years().size())
                .mapToObj(year -> Amounts.plain(owning.equivalent(year).amount())).toList();
    }

    private static List<String> marginals(Owning owning) {
        return IntStream.rangeClosed(1, owning.years().size())
                .mapToObj(year -> Amounts.plain(owning.marginal(year).amount())).toList();
    }

    /**
     * Cases 1 to 5: Principles of Engineering Economic Analysis, 5th ed., chapter 11; Engineering Economic Analysis, 14th ed.,
     * problem 13-1, and its tables, p. 585; for 0.25 %, the table "Discrete Cash Flow" of discrete compound interest as found at
     * vdocuments.us, without an author. A/P, A/F, P/A, P/F in that order; 0 where it
     * is not printed. Below the line: worked out apart from the program.
     */
    @ParameterizedTest
    @CsvSource({"15, 5, 0.29832, 0.14832, 3.35216, 0.49718, 5e-6", "15, 10, 0.19925, 0.04925, 0, 0.24718, 5e-6",
            "10, 4, 0.31547, 0.21547, 0, 0, 5e-6", "10, 5, 0.2638, 0, 0, 0, 5e-5", "35, 5, 0.4505, 0, 0, 0, 5e-5",
            "35, 10, 0.3683, 0, 2.715, 0, 5e-4", "0.25, 12, 0.08469, 0, 11.8073, 0.9705, 5e-5",
            "0.25, 24, 0.04298, 0, 23.2660, 0, 5e-5",
            // worked out apart from the program
            "3, 15, 0, 0, 11.9379, 0, 5e-5", "3, 11, 0.10808, 0, 9.2526, 0, 5e-5",
            "3, 16, 0.07961, 0, 12.5611, 0, 5e-5",
            "3, 17, 0, 0, 13.1661, 0, 5e-5", "3, 8, 0, 0, 7.0197, 0, 5e-5", "7, 5, 0, 0, 4.1002, 0, 5e-5",
            "7, 11, 0.13336, 0, 7.4987, 0, 5e-5", "7, 16, 0.10586, 0, 9.4466, 0, 5e-5",
            "8, 10, 0.14903, 0, 6.7101, 0, 5e-5",
            "8, 5, 0.25046, 0, 3.9927, 0, 5e-5", "8, 11, 0.14008, 0, 7.1390, 0, 5e-5"})
    void factors_publishedTables_match(String rate, int periods, double annualOfPresent, double annualOfFuture,
            double presentOfAnnual, double presentOfFuture, double digits) {
        Interest interest = interest(rate);

        check(interest.annualOfPresent(periods), annualOfPresent, digits);
        check(interest.annualOfFuture(periods), annualOfFuture, digits);
        check(interest.presentOfAnnual(periods), presentOfAnnual, digits);
        check(interest.presentOfFuture(periods), presentOfFuture, digits);
    }

    private static void check(Figure factor, double expected, double digits) {
        if (expected != 0) {
            assertThat(value(factor)).isEqualTo(expected, within(digits * 1.0001));
        }
    }

    /** P/G and A/G, which the program does not need, follow from its factors: cases 1 and 2. */
    @Test
    void factors_gradients_followFromTheOthers() {
        Interest interest = interest("15");
        assertThat((value(interest.presentOfAnnual(5)) - 5 * value(interest.presentOfFuture(5))) / 0.15)
                .isEqualTo(5.77514, within(5e-6));
        assertThat(1 / 0.15 - 10 / 0.15 * value(interest.annualOfFuture(10))).isEqualTo(3.38320, within(5e-6));
    }

    @Test
    void factors_withoutInterest_areShares() {
        Interest none = interest("0");

        assertThat(value(none.annualOfPresent(16))).isEqualTo(1 / 16.0);
        assertThat(value(none.annualOfFuture(16))).isEqualTo(1 / 16.0);
        assertThat(value(none.presentOfAnnual(16))).isEqualTo(16);
        assertThat(value(none.presentOfFuture(16))).isEqualTo(1);
        assertThatIllegalArgumentException().isThrownBy(() -> none.annualOfPresent(0));
        assertThatIllegalArgumentException().isThrownBy(() -> interest("-1"));
        assertThatIllegalArgumentException().isThrownBy(() -> interest("101"));
    }

    /**
     * Cases 6 and 7: Principles of Engineering Economic Analysis, 5th ed., Examples 11.10 and 11.9: what a new machine costs more,
     * less what it saves. The last three rows are case 13, an exercise of a course read without its title, whose answers in whole
     * dollars are 22,750, 21,913 and 21,614.
     */
    @ParameterizedTest
    @CsvSource({"27000, 10000, -7000/-7000/-7000/-7000/-7000, 15, -428.64",
            "450000, 200000, -110000/-110000/-110000/-110000/-110000, 16.67, 889.06",
            "5000, 3000, 20000, 15, 22750.00", "5000, 2500, 20000/20000, 15, 21912.79",
            "5000, 2000, 20000/20000/20000, 15, 21613.93"})
    void equivalent_publishedExamples_match(String price, String salvage, String costs, String rate, String expected) {
        Owning owning = owning(price, salvage, costs, rate);

        assertThat(Amounts.plain(owning.equivalent(owning.years().size()).amount())).isEqualTo(expected);
    }

    /** Case 8: the same book, Example 11.3: 10 years with a press bought in year 5; exact, where the book rounds its factors. */
    @Test
    void equivalent_pressReplacedOnTheWay_matchesThePublishedExample() {
        // O&M 7000 rising by 1000; 29000 net for the next press in year 5; O&M from 0 rising by 1000; 15000 left
        Owning kept = owning("0", "0/0/0/0/0/0/0/0/0/15000", "7000/8000/9000/10000/40000/0/1000/2000/3000/4000", "15");
        Owning replaced = owning("27000", "3000", "0/1000/2000/3000/4000/5000/6000/7000/8000/9000", "15");

        assertThat(Amounts.plain(kept.equivalent(10).amount())).isEqualTo("8532.34");
        assertThat(Amounts.plain(replaced.equivalent(10).amount())).isEqualTo("8615.25");
    }

    /** Case 9: an exercise of a course, read without its title; its answers are in whole dollars. */
    @Test
    void economicLife_newMachine_matchesTheExercise() {
        Owning owning = owning("25000", "16000/13000/11000/10000/9500", "5000/8000/11000/14000/17000", "8");

        assertThat(IntStream.rangeClosed(1, 5).mapToObj(year -> Amounts.number(owning.equivalent(year).amount()))
                .map(amount -> Math.round(amount.doubleValue())))
                .containsExactly(16000L, 14212L, 14159L, 14541L, 15181L);
        assertThat(marginals(owning)).containsExactly("16000.00", "12280.00", "14040.00", "15880.00", "18300.00");
        assertThat(owning.economicLife()).isEqualTo(3);
    }

    /** Case 10: Engineering Economic Analysis, 14th ed., problem 13-1 (the life); the amounts were worked out apart from the program. */
    @Test
    void economicLife_gradient_matchesThePublishedExample() {
        Owning owning = owning("1050000", "225000", "235000/310000/385000/460000/535000/610000", "10");

        assertThat(equivalents(owning).subList(3, 6)).containsExactly("621351.00", "610892.37", "613692.88");
        assertThat(owning.economicLife()).isEqualTo(5);
    }

    /** Case 11: Engineering Economic Analysis, p. 415: keep four years beside a challenger at 4,589 a year. */
    @Test
    void keep_overhaul_matchesThePublishedExample() {
        Owning owning = owning("4000", "0", "1800/1800/2800/3800/4800", "8");

        assertThat(equivalents(owning)).containsExactly("6120.00", "4043.08", "3660.17", "3691.20", "3880.20");
        assertThat(Amounts.plain(owning.marginal(1).amount())).isEqualTo("6120.00");
        assertThat(owning.keep(usd("4589"))).isEqualTo(4);
    }

    /** Case 12: the same book, p. 408: 13,250, 14,600, 15,950 beside 15,430: keep two years. Nothing is paid or left. */
    @Test
    void keep_risingMarginalCosts_matchesThePublishedExample() {
        assertThat(owning("0", "0", "13250/14600/15950", "15").keep(usd("15430"))).isEqualTo(2);
        assertThat(owning("0", "0", "15500", "15").keep(usd("15430"))).isZero();
    }

    /** A machine of $6,000 that lives 11 years instead of 16: worked out apart from the program. */
    @ParameterizedTest
    @CsvSource({"3, 648.46, 477.67, 170.80", "5, 722.33, 553.62, 168.71", "7, 800.14, 635.15, 165.00",
            "10, 923.78, 766.90, 156.88", "0, 545.45, 375.00, 170.45"})
    void earlier_elevenYearsForSixteen_costsSoMuchAYear(String rate, String shorter, String longer, String more) {
        EarlierReplacement early = EarlierReplacement.of(usd("6000"), 11, 16, interest(rate), Place.NOWHERE)
                .orElseThrow();

        assertThat(plain(early.yearly(11), early.yearly(16), early.difference()))
                .containsExactly(shorter, longer, more);
        assertThat(early.difference().mark()).isEqualTo(Provenance.DERIVED);
        assertThat(HowReader.evaluate(early.difference().how().text(USD))).isEqualByComparingTo(more);
    }

    private static List<String> plain(SourcedAmount... amounts) {
        return Arrays.stream(amounts).map(SourcedAmount::amount).map(Amounts::plain).toList();
    }

    @ParameterizedTest
    @CsvSource({"5, 1298.84", "7, 1722.08"})
    void earlier_purchasePutOff_isWorthSoMuch(String rate, String worth) {
        assertThat(plain(EarlierReplacement.of(usd("6000"), 11, 16, interest(rate), Place.NOWHERE).orElseThrow()
                .putOff())).containsExactly(worth);
    }

    @ParameterizedTest
    @CsvSource({"0, 8, 12, 1", "6000, 12, 8, 1", "6000, 8, 8, 1", "6000, 0, 8, 1", "6000, 8, 41, 1", "-5, 0, 99, 2"})
    void earlier_absurd_saysWhy(String price, int shorter, int longer, int problems) {
        assertThat(EarlierReplacement.of(usd(price), shorter, longer, interest("5"), Place.NOWHERE).problems())
                .hasSize(problems);
    }

    @Test
    void owning_withoutYears_isABug() {
        MonetaryAmount price = usd("1");
        assertThatIllegalArgumentException().isThrownBy(() -> new Owning(price, List.of(), interest("5")));
        assertThatIllegalArgumentException().isThrownBy(() -> owning("1", "0", "1", "5").equivalent(2));
    }
}

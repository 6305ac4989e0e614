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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Replacing machines earlier, by factors that published tables of engineering economy give. */
class EarlierReplacementTest {

    private static Interest interest(String percent) {
        return new Interest(Percent.of(percent));
    }

    private static double value(Figure figure) {
        return figure.exact().doubleValue();
    }

    /**
     * Principles of Engineering Economic Analysis, 5th ed., chapter 11; Engineering Economic Analysis, 14th ed., problem 13-1, and
     * its tables, p. 585; for 0.25 %, the table "Discrete Cash Flow" of discrete compound interest as found at vdocuments.us,
     * without an author. A/P and P/F, which is one by the growth; 0 where it is not printed.
     */
    @ParameterizedTest
    @CsvSource({"15, 5, 0.29832, 0.49718, 5e-6", "15, 10, 0.19925, 0.24718, 5e-6", "10, 4, 0.31547, 0, 5e-6",
            "10, 5, 0.2638, 0, 5e-5", "35, 5, 0.4505, 0, 5e-5", "35, 10, 0.3683, 0, 5e-4",
            "0.25, 12, 0.08469, 0.9705, 5e-5", "0.25, 24, 0.04298, 0, 5e-5",
            // worked out apart from the program
            "3, 11, 0.10808, 0, 5e-5", "3, 16, 0.07961, 0, 5e-5", "7, 11, 0.13336, 0, 5e-5", "7, 16, 0.10586, 0, 5e-5",
            "8, 10, 0.14903, 0, 5e-5", "8, 5, 0.25046, 0, 5e-5", "8, 11, 0.14008, 0, 5e-5"})
    void factors_publishedTables_match(String rate, int periods, double annualOfPresent, double presentOfFuture,
            double digits) {
        Interest interest = interest(rate);

        check(interest.annualOfPresent(periods), annualOfPresent, digits);
        check(Figure.term(1, "").over(interest.growth(periods)), presentOfFuture, digits);
    }

    private static void check(Figure factor, double expected, double digits) {
        if (expected != 0) {
            assertThat(value(factor)).isEqualTo(expected, within(digits * 1.0001));
        }
    }

    @Test
    void factors_withoutInterest_areShares() {
        Interest none = interest("0");

        assertThat(value(none.annualOfPresent(16))).isEqualTo(1 / 16.0);
        assertThat(value(none.growth(16))).isEqualTo(1);
        assertThatIllegalArgumentException().isThrownBy(() -> none.annualOfPresent(0));
        assertThatIllegalArgumentException().isThrownBy(() -> interest("-1"));
        assertThatIllegalArgumentException().isThrownBy(() -> interest("101"));
    }

    /** A machine of $6,000 that lives 11 years instead of 16: worked out apart from the program. */
    @ParameterizedTest
    @CsvSource({"3, 170.80", "5, 168.71", "7, 165.00", "10, 156.88", "0, 170.45"})
    void earlier_elevenYearsForSixteen_costsSoMuchAYear(String rate, String more) {
        SourcedAmount difference = EarlierReplacement.of(usd("6000"), 11, 16, interest(rate), Place.NOWHERE)
                .orElseThrow().difference();

        assertThat(Amounts.plain(difference.amount())).isEqualTo(more);
        assertThat(difference.mark()).isEqualTo(Provenance.DERIVED);
        assertThat(HowReader.evaluate(difference.how().text(USD))).isEqualByComparingTo(more);
    }

    @ParameterizedTest
    @CsvSource({"0, 8, 12, 1", "6000, 12, 8, 1", "6000, 8, 8, 1", "6000, 0, 8, 1", "6000, 8, 41, 1", "-5, 0, 99, 2"})
    void earlier_absurd_saysWhy(String price, int shorter, int longer, int problems) {
        assertThat(EarlierReplacement.of(usd(price), shorter, longer, interest("5"), Place.NOWHERE).problems())
                .hasSize(problems);
    }
}

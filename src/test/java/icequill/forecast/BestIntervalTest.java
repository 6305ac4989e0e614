package icequill.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.stops.FoulingLife;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cheapest cleaning interval against worked figures; a cleaning at 150.00, a call at 400.00, shape 2.5, scale 14 months. */
class BestIntervalTest {

    private static final FoulingLife CLOCK = new FoulingLife(2.5, 14);
    private static final long CLEANING = 15000;
    private static final IntervalCosts.Side SIDE = new IntervalCosts.Side(CLOCK, 40000);

    /** A call only restarts: worked out apart from the program by the closed form. */
    @ParameterizedTest
    @CsvSource({"3, 63401", "4, 50236", "6, 39619", "9, 37672", "12, 42208"})
    void aYear_callRestarts_byTheClosedForm(double months, long cost) {
        assertThat(IntervalCosts.restarts(CLEANING, List.of(SIDE)).aYear(months)).isEqualTo(cost);
    }

    @Test
    void best_callRestarts_byTheClosedForm() {
        BestInterval best = IntervalCosts.restarts(CLEANING, List.of(SIDE)).best(6);

        assertThat(best.months().orElseThrow()).isEqualTo(8.0409, within(5e-5));
        assertThat(best.aYear()).isEqualTo(37309);
        assertThat(best.neverAYear()).isEmpty();
        assertThat(best.isCapped()).isTrue();
        assertThat(best.hygiene()).isEqualTo(39619 - 37309);
    }

    /** The search finds what the formula gives: two alike sides at half the price each are one. */
    @Test
    void best_callRestartsTwoSides_searchAgreesWithTheFormula() {
        IntervalCosts.Side half = new IntervalCosts.Side(CLOCK, 20000);

        BestInterval best = IntervalCosts.restarts(CLEANING, List.of(half, half)).best(12);

        assertThat(best.months().orElseThrow()).isEqualTo(8.0409, within(5e-5));
        assertThat(best.aYear()).isEqualTo(37309);
        assertThat(best.isCapped()).isFalse();
        assertThat(best.hygiene()).isZero();
    }

    /** A call cleans, the calendar stays: worked out apart from the program with the renewal function. */
    @ParameterizedTest
    @CsvSource({"3, 63372", "6, 39167", "12, 36155"})
    void aYear_callResets_byTheRenewalFunction(double months, long cost) {
        assertThat(IntervalCosts.resets(CLEANING, List.of(SIDE)).aYear(months)).isEqualTo(cost);
    }

    /** The cheapest is no dearer than any interval on a fine grid, and cheaper than never, as the threshold of theory says. */
    @Test
    void best_callResets_isTheLowestOfAFineGrid() {
        IntervalCosts costs = IntervalCosts.resets(CLEANING, List.of(SIDE));

        BestInterval best = costs.best(6);

        assertThat(best.months()).isPresent();
        for (double months = 0.5; months < 60; months += 0.25) {
            assertThat(best.aYear()).isLessThanOrEqualTo(costs.aYear(months));
        }
        // 12 x 400 / mean life of 12.421693 months; 150/400 is below (1 - 0.183105) / 2, so some interval is cheaper.
        assertThat(best.neverAYear()).contains(38642L);
        assertThat(best.aYear()).isLessThan(38642);
    }

    /**
     * Beichelt, Applied Probability and Stochastic Processes, 2nd ed., exercise: F = (1 - e^-Lt)^2 with L = 0.1, 180 for a failure,
     * 100 for a planned one; its renewal function is 2Lt/3 - (2/9)(1 - e^-3Lt). The cost falls for ever towards 12: no optimum.
     */
    @Test
    void best_costFallsForEver_saysThatNoneIsBest() {
        DoubleUnaryOperator rate = t -> (100 + 180 * (2 * 0.1 * t / 3 - 2.0 / 9 * -Math.expm1(-0.3 * t))) / t;
        IntervalCosts costs = new IntervalCosts(t -> 1e6 * rate.applyAsDouble(t), 12e6, 600, Optional.empty());

        assertThat(costs.aYear(5) / 1e6).isEqualTo(25.7850, within(5e-5));
        assertThat(costs.aYear(10) / 1e6).isEqualTo(18.1991, within(5e-5));
        assertThat(costs.aYear(20) / 1e6).isEqualTo(15.0050, within(5e-5));
        assertThat(costs.aYear(50) / 1e6).isEqualTo(13.2000, within(5e-5));
        BestInterval best = costs.best(6);
        assertThat(best.months()).isEmpty();
        assertThat(best.aYear()).isEqualTo(12_000_000);
        assertThat(best.isCapped()).isTrue();
    }

    /** Without memory cleaning is of no use; dear cleanings beside cheap calls are not either, but for those that only restart. */
    @Test
    void best_cleaningOfNoUse_saysThatNoneIsBest() {
        List<IntervalCosts.Side> random = List.of(new IntervalCosts.Side(new FoulingLife(1, 14), 40000));
        assertThat(IntervalCosts.restarts(CLEANING, random).best(6).months()).isEmpty();
        assertThat(IntervalCosts.restarts(CLEANING, random).never()).contains(12L * 40000 / 14 + 1);
        assertThat(IntervalCosts.resets(CLEANING, random).best(6).months()).isEmpty();
        assertThat(IntervalCosts.resets(60000, List.of(SIDE)).best(6).months()).isEmpty();
        assertThat(IntervalCosts.restarts(60000, List.of(SIDE)).best(6).months()).isPresent();
    }

    @Test
    void costs_absurd_areBugs() {
        assertThatIllegalArgumentException().isThrownBy(() -> IntervalCosts.resets(0, List.of(SIDE)));
        assertThatIllegalArgumentException().isThrownBy(() -> IntervalCosts.resets(CLEANING, List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> IntervalCosts.restarts(CLEANING, List.of(SIDE)).aYear(0));
        assertThatIllegalArgumentException().isThrownBy(() -> IntervalCosts.restarts(CLEANING, List.of(SIDE)).best(0));
        assertThatIllegalArgumentException().isThrownBy(() -> new IntervalCosts.Side(CLOCK, -1));
    }
}

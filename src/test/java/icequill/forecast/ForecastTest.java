package icequill.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.RenewalSeries;
import icequill.forecast.stops.StopCounts;
import icequill.forecast.stops.StopPolicy;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.statistics.distribution.WeibullDistribution;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Counts and costs against published formulas, worked figures and simulated years. */
class ForecastTest {

    private static final Offset<Double> SIX_DIGITS = within(1e-6);
    static final FoulingLife CLOCK = new FoulingLife(2.5724, 13.838);
    private static final List<CallKind> KINDS = List.of(new CallKind(0.4, 15000), new CallKind(0.35, 27658),
            new CallKind(0.25, 52000));
    static final CallTable TABLE = new CallTable(
            Map.of(Cause.RANDOM, KINDS, Cause.CONDENSER, KINDS, Cause.WATER, KINDS));

    /** Computed: of 100 like this 11 stop by month 6 and 50 by month 12. */
    @Test
    void clock_ofChances_playsThemBack() {
        FoulingLife clock = FoulingLife.ofChances(0.11, 0.50, Place.NOWHERE).orElseThrow();

        assertThat(clock.shape()).isEqualTo(2.5724, within(5e-5));
        assertThat(clock.scale()).isEqualTo(13.838, within(5e-4));
        assertThat(clock.chanceBy(6)).isEqualTo(0.11, within(1e-12));
        assertThat(clock.chanceBy(12)).isEqualTo(0.50, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.5, OUT_OF_RANGE", "0.1, 1, OUT_OF_RANGE", "-0.1, 0.5, OUT_OF_RANGE", "0.1, 0.18, NOT_ALLOWED",
            "0.5, 0.4, NOT_ALLOWED", "NaN, 0.5, OUT_OF_RANGE"})
    void clock_absurdChances_saysWhy(double six, double twelve, Code code) {
        assertThat(FoulingLife.ofChances(six, twelve, Place.NOWHERE).problems()).extracting(Problem::code)
                .containsExactly(code);
    }

    /** NIST/SEMATECH e-Handbook 8.1.6.2 by formula; computed for shape 2.5 and scale 14 months. */
    @Test
    void clock_meanAndChances_byTheFormula() {
        FoulingLife clock = new FoulingLife(2.5, 14);

        assertThat(clock.mean()).isEqualTo(12.421693, SIX_DIGITS);
        assertThat(clock.chanceBy(3)).isEqualTo(0.0210318, within(1e-7));
        assertThat(clock.chanceBy(6)).isEqualTo(0.1132946, within(1e-7));
        assertThat(clock.chanceBy(12)).isEqualTo(0.4934815, within(1e-7));
    }

    /** The Weibull renewal function, computed by discretization to about 1e-5. */
    @ParameterizedTest
    @CsvSource({"3, 0.021073", "6, 0.114581", "12, 0.528872", "24, 1.525555", "36, 2.490088"})
    void renewals_weibull_meanIsTheRenewalFunction(double months, double expected) {
        assertThat(RenewalSeries.of(new FoulingLife(2.5, 14), 36).counts(0, months).mean())
                .isEqualTo(expected, within(2e-5));
    }

    /** Shape 1 is a Poisson process, whatever its age: a closed form. */
    @ParameterizedTest
    @CsvSource({"0, 30", "7, 30", "0, 3", "25, 60"})
    void renewals_shapeOne_arePoisson(double age, double months) {
        CountDistribution counts = RenewalSeries.of(new FoulingLife(1, 10), 60).counts(age, months);
        CountDistribution poisson = CountDistribution.poisson(months / 10);

        for (int n = 0; n <= poisson.most(); n++) {
            assertThat(counts.chance(n)).as("chance of " + n).isEqualTo(poisson.chance(n), within(1e-9));
        }
    }

    /** Wald's identity: the first stop after the horizon comes, on average, at (M + 1) times the mean life, and not before it. */
    @ParameterizedTest
    @CsvSource({"1.3, 9", "2.5724, 13.838", "4, 20", "6, 10"})
    void renewals_anyShape_laterHorizonsAgreeWithTheAsymptote(double shape, double scale) {
        FoulingLife clock = new FoulingLife(shape, scale);
        double months = 8 * clock.mean();

        WeibullDistribution law = WeibullDistribution.of(shape, scale);
        double variation = law.getVariance() / (law.getMean() * law.getMean());

        // Renewal theory: M(t) tends to t / mean + (variation - 1) / 2.
        assertThat(RenewalSeries.of(clock, months).counts(0, months).mean())
                .isEqualTo(months / clock.mean() + (variation - 1) / 2, within(shape > 3 ? 0.05 : 2e-3));
    }

    /** Confirmed by 20 million simulated years ({@link ForecastRuns}, seed 20261126) and by the Weibull count series (McShane et al. 2008, from memory). */
    @ParameterizedTest
    @CsvSource({"6, 0, 0.422203, 0.401967, 0.648528, 0.063081, 12108.9, 20489.1, 0, 0, 52000",
            "0, 12, 1.411268, 0.450419, 0.026532, 0.367801, 40475.6, 25855.9, 15000, 30000, 79658"})
    void year_oneMachine_matchesSimulatedYears(double every, double age, double calls, double variance, double none,
            double moreThanOne, double mean, double deviation, long low, long middle, long high) {
        CleaningSchedule care = every == 0 ? CleaningSchedule.NEVER : CleaningSchedule.every(every);
        Forecast forecast = Forecast.of(List.of(new MachineRisk(0.2, Optional.empty(), 0, CLOCK, age)),
                new MaintenancePolicy(0, care, CleaningSchedule.NEVER, TABLE), StopPolicy.RESETS, 12);

        assertThat(forecast.calls().mean()).isEqualTo(calls, SIX_DIGITS);
        assertThat(forecast.calls().variance()).isEqualTo(variance, SIX_DIGITS);
        assertThat(forecast.calls().chance(0)).isEqualTo(none, SIX_DIGITS);
        assertThat(forecast.calls().chanceOfMoreThan(1)).isEqualTo(moreThanOne, SIX_DIGITS);
        MixedDistribution charges = forecast.charges();
        assertThat(charges.mean()).isEqualTo(mean, within(0.1));
        assertThat(charges.deviation()).isEqualTo(deviation, within(0.1));
        assertThat(List.of(charges.quantile(0.1), charges.quantile(0.5), charges.quantile(0.9)))
                .containsExactly(low, middle, high);
        assertThat(charges.chanceOfAtMost(0)).isEqualTo(none, SIX_DIGITS);
    }

    /** Minimal repair, computed: 0.2 + 12 k^(b-1) / h^b for shape 2.5, scale 14. */
    @ParameterizedTest
    @CsvSource({"3, 0.285024", "4, 0.330903", "6, 0.440485", "12, 0.880194"})
    void year_callOnlyRestarts_meanByTheClosedForm(double every, double calls) {
        assertThat(forecast(new FoulingLife(2.5, 14), every, StopPolicy.RESTARTS).calls().mean())
                .isEqualTo(calls, SIX_DIGITS);
    }

    /** Computed: shorter is not always fewer, where the shorter interval does not divide the longer. */
    @Test
    void renewals_intervalThatDoesNotDivide_mayHaveMoreStops() {
        FoulingLife steep = new FoulingLife(6, 10);

        assertThat(new StopCounts(steep, StopPolicy.RESETS, 36, CleaningSchedule.every(12)).of(0).mean())
                .isEqualTo(2.8737, within(5e-5));
        assertThat(new StopCounts(steep, StopPolicy.RESETS, 36, CleaningSchedule.every(18)).of(0).mean())
                .isEqualTo(2.7976, within(5e-5));
    }

    /** Published: Poisson of mean 0.5 and 1.2, by formula. */
    @Test
    void poisson_chances_byTheFormula() {
        assertThat(CountDistribution.poisson(0.5).chance(0)).isEqualTo(0.606531, SIX_DIGITS);
        assertThat(CountDistribution.poisson(0.5).chance(2)).isEqualTo(0.075816, SIX_DIGITS);
        assertThat(CountDistribution.poisson(1.2).chanceOfMoreThan(0)).isEqualTo(0.698806, SIX_DIGITS);
        assertThat(CountDistribution.poisson(0).chance(0)).isEqualTo(1);
    }

    /** E[min(calls, 1)] of a Poisson number is its chance of any: of mean 0.433, 0.351472. */
    @Test
    void counts_meanUpToALimit_isThatOfTheIncludedCalls() {
        assertThat(CountDistribution.poisson(0.433049).meanUpTo(1)).isEqualTo(0.351472, SIX_DIGITS);
    }

    @Test
    void waterCooled_hasNoStopsOfTheCondenser() {
        Forecast forecast = forecast(CLOCK, 6, StopPolicy.RESETS);

        assertThat(forecast.calls(Cause.CONDENSER).most()).isZero();
    }

    /** Brushing alone changes nothing but the stops of the condenser. */
    @Test
    void brushing_monthly_changesTheCondenserAlone() {
        List<MachineRisk> machines = List.of(new MachineRisk(0.3, Optional.of(CLOCK), 5, CLOCK, 8));
        Forecast unbrushed = Forecast.of(machines,
                new MaintenancePolicy(0, CleaningSchedule.NEVER, CleaningSchedule.NEVER, TABLE), StopPolicy.RESETS, 12);
        Forecast brushed = Forecast.of(machines,
                new MaintenancePolicy(0, CleaningSchedule.NEVER, CleaningSchedule.every(1), TABLE), StopPolicy.RESETS,
                12);

        assertThat(brushed.calls(Cause.CONDENSER).mean()).isLessThan(unbrushed.calls(Cause.CONDENSER).mean() / 10);
        assertThat(brushed.calls(Cause.WATER).mean()).isEqualTo(unbrushed.calls(Cause.WATER).mean());
        assertThat(brushed.calls(Cause.RANDOM).mean()).isEqualTo(unbrushed.calls(Cause.RANDOM).mean());
    }

    /** Two choices that differ in a fixed price alone share all their random faults, so the dearer is never the cheaper. */
    @Test
    void comparison_sharedRandomFaults_cancel() {
        List<MachineRisk> machines = List.of(new MachineRisk(2, Optional.empty(), 0, new FoulingLife(3, 1e6), 0));
        Forecast free = Forecast.of(machines,
                new MaintenancePolicy(0, CleaningSchedule.NEVER, CleaningSchedule.NEVER, TABLE), StopPolicy.RESETS, 12);
        Forecast fixed = Forecast.of(machines,
                new MaintenancePolicy(100, CleaningSchedule.NEVER, CleaningSchedule.NEVER, TABLE), StopPolicy.RESETS,
                12);

        assertThat(fixed.chanceCheaperThan(free)).isEqualTo(0, within(1e-9));
        assertThat(free.chanceCheaperThan(fixed)).isEqualTo(1, within(1e-9));
    }

    /** Equal care, cheaper per call and per visit: cheaper whatever happens, however the machines fall out. */
    @ParameterizedTest
    @CsvSource({"1, 1", "1, 0.6", "0, 1", "0.5, 0.8"})
    void comparison_equalCareAndCheaperThroughout_isAlwaysCheaper(double cleans, double restores) {
        List<MachineRisk> machines = List.of(new MachineRisk(0.4, Optional.of(CLOCK), 7, CLOCK, 9),
                new MachineRisk(0.2, Optional.empty(), 0, CLOCK, 1));
        List<CallKind> less = List.of(new CallKind(0.4, 14000), new CallKind(0.35, 27657), new CallKind(0.25, 50000));
        CallTable cheap = new CallTable(Map.of(Cause.RANDOM, less, Cause.CONDENSER, less, Cause.WATER, less));
        CleaningSchedule care = new CleaningSchedule(6, restores);

        Forecast dear = Forecast.of(machines, new MaintenancePolicy(107500, care, care, TABLE), new StopPolicy(cleans),
                12);
        Forecast cheaper = Forecast.of(machines, new MaintenancePolicy(107400, care, care, cheap),
                new StopPolicy(cleans), 12);

        assertThat(cheaper.chanceCheaperThan(dear)).isEqualTo(1, within(1e-9));
        assertThat(dear.chanceCheaperThan(cheaper)).isEqualTo(0, within(1e-9));
    }

    private static Forecast forecast(FoulingLife water, double every, StopPolicy policy) {
        return Forecast.of(List.of(new MachineRisk(0.2, Optional.empty(), 0, water, 0)),
                new MaintenancePolicy(0, CleaningSchedule.every(every), CleaningSchedule.NEVER, TABLE), policy, 12);
    }
}

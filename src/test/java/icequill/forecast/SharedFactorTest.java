package icequill.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.SharedFactor;
import icequill.forecast.stops.StopPolicy;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the machines of one site share, against the closed forms of a mixed Poisson number and against years drawn by chance. */
class SharedFactorTest {

    private static final double YEAR = 12;
    private static final int DRAWS = 200_000;
    private static final double ERRORS = 4;
    private static final FoulingLife NEVER_DIRTY = new FoulingLife(2, 1e6);
    private static final FoulingLife CLOCK = new FoulingLife(2.5724, 13.838);
    private static final List<CallKind> KINDS = List.of(new CallKind(1, 20000));
    private static final CallTable TABLE = new CallTable(
            Map.of(Cause.RANDOM, KINDS, Cause.CONDENSER, KINDS, Cause.WATER, KINDS));
    private static final MaintenancePolicy NEVER = new MaintenancePolicy(0, CleaningSchedule.NEVER,
            CleaningSchedule.NEVER, TABLE);

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.3, 0.5, 0.75})
    void scenarios_meanIsOneAndDeviationIsAsStated(double deviation) {
        List<SharedFactor.Scenario> scenarios = new SharedFactor(deviation).scenarios();

        assertThat(moment(scenarios, 0)).isCloseTo(1, within(1e-12));
        assertThat(moment(scenarios, 1)).isCloseTo(1, within(1e-12));
        assertThat(moment(scenarios, 2)).isCloseTo(1 + deviation * deviation, within(1e-11));
        // The third moment of a gamma factor of mean 1.
        double square = deviation * deviation;
        assertThat(moment(scenarios, 3)).isCloseTo((1 + square) * (1 + 2 * square), within(1e-10));
        assertThat(scenarios).isSortedAccordingTo((one, other) -> Double.compare(one.factor(), other.factor()));
    }

    private static double moment(List<SharedFactor.Scenario> scenarios, int power) {
        return scenarios.stream().mapToDouble(scenario -> scenario.weight() * Math.pow(scenario.factor(), power)).sum();
    }

    /** Two machines with one random fault a year each: a negative binomial number of mean 2 and variance 2 + 4 s^2. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.4, 0.5})
    void randomFaults_followANegativeBinomialLaw(double deviation) {
        CountDistribution calls = random(2, 1, deviation).calls();

        double size = 1 / (deviation * deviation);
        assertThat(calls.mean()).isCloseTo(2, within(1e-9));
        assertThat(calls.variance()).isCloseTo(2 + 4 * deviation * deviation, within(1e-9));
        for (int n = 0; n <= 12; n++) {
            assertThat(calls.chance(n)).as("%d calls", n)
                    .isCloseTo(negativeBinomial(n, size, 2), within(1e-6));
        }
    }

    /** By the recurrence p(n + 1) / p(n) = (size + n) / (n + 1) * mean / (size + mean). */
    private static double negativeBinomial(int calls, double size, double mean) {
        double chance = Math.pow(size / (size + mean), size);
        for (int n = 0; n < calls; n++) {
            chance *= (size + n) / (n + 1) * mean / (size + mean);
        }
        return chance;
    }

    /** Charges of 200.00 each: mean as without the factor, deviation 200 sqrt(m + m^2 s^2), and the far end further out. */
    @Test
    void charges_randomFaults_keepTheirMeanAndSpreadWiderWithStrength() {
        long before = 0;
        for (double deviation : new double[]{0, 0.25, 0.5, 0.75}) {
            MixedDistribution charges = random(3, 2, deviation).charges();

            assertThat(charges.mean()).isCloseTo(6 * 20000.0, within(1e-5));
            assertThat(charges.deviation()).isCloseTo(20000 * Math.sqrt(6 + 36 * deviation * deviation), within(1e-4));
            assertThat(charges.quantile(0.9)).isGreaterThan(before);
            before = charges.quantile(0.9);
        }
    }

    /** With the factor two machines are further apart from their mean than two sites of one machine each. */
    @Test
    void twoMachines_stopTogether() {
        CountDistribution together = random(2, 1, 0.5).calls();
        CountDistribution one = random(1, 1, 0.5).calls();
        CountDistribution apart = one.plus(one);

        assertThat(together.mean()).isCloseTo(apart.mean(), within(1e-10));
        assertThat(apart.variance()).isCloseTo(2.5, within(1e-9));
        assertThat(together.variance()).isCloseTo(3, within(1e-9));
        assertThat(together.chanceOfMoreThan(4)).isGreaterThan(apart.chanceOfMoreThan(4));
        assertThat(ChancesPerTenSites.of(together).none())
                .isGreaterThan(ChancesPerTenSites.of(random(2, 1, 0).calls()).none());
    }

    private static Forecast random(int machines, double faults, double deviation) {
        MachineRisk machine = new MachineRisk(faults, Optional.empty(), 0, NEVER_DIRTY, 0);
        return Forecast.of(IntStream.range(0, machines).mapToObj(i -> machine).toList(), NEVER,
                new StopPolicy(1, new SharedFactor(deviation)), YEAR);
    }

    /** Where a call only restarts, stops are Poisson for each value of the factor: mean H, variance H + H^2 s^2. */
    @Test
    void restarts_keepTheirMean() {
        MachineRisk machine = new MachineRisk(0, Optional.empty(), 0, CLOCK, 6);
        double hazard = Math.pow(18 / 13.838, 2.5724) - Math.pow(6 / 13.838, 2.5724);

        CountDistribution calls = Forecast
                .of(List.of(machine, machine), NEVER, new StopPolicy(0, new SharedFactor(0.5)), YEAR)
                .calls();

        assertThat(calls.mean()).isCloseTo(2 * hazard, within(1e-9));
        assertThat(calls.variance()).isCloseTo(2 * hazard + hazard * hazard, within(1e-8));
    }

    /**
     * Two machines at one site, old dirt, calls that clean: drawn year by year with a factor for each year (the sum of gamma's
     * four exponentials). As a bad site is cleaned by its calls, fewer calls come on average than without a factor.
     */
    @Test
    void callsThatClean_agreeWithDrawnYears() {
        Random random = new Random(20261126);
        double[] calls = new double[DRAWS];
        double[] saved = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double factor = 0;
            for (int k = 0; k < 4; k++) {
                factor -= Math.log(1 - random.nextDouble()) / 4;
            }
            int faults = renewals(random, 2 * 0.3 * factor);
            int dirty = stops(random, factor, 9, YEAR) + stops(random, factor, 20, YEAR);
            int cleaned = 0;
            for (int stretch = 0; stretch < 2 * 3; stretch++) {
                cleaned += stops(random, factor, 0, 4);
            }
            calls[i] = faults + dirty;
            saved[i] = 35000 + 20000L * cleaned < 20000L * dirty ? 1 : 0;
        }
        List<MachineRisk> machines = List.of(new MachineRisk(0.3, Optional.empty(), 0, CLOCK, 9),
                new MachineRisk(0.3, Optional.empty(), 0, CLOCK, 20));
        StopPolicy policy = new StopPolicy(1, new SharedFactor(0.5));
        Forecast never = Forecast.of(machines, NEVER, policy, YEAR);
        Forecast every = Forecast.of(machines,
                new MaintenancePolicy(35000, CleaningSchedule.every(4), CleaningSchedule.NEVER, TABLE), policy, YEAR);

        assertThat(average(calls)).isCloseTo(never.calls().mean(), within(ERRORS * error(calls)));
        double[] squares = Arrays.stream(calls).map(number -> number * number).toArray();
        double mean = never.calls().mean();
        assertThat(average(squares)).isCloseTo(never.calls().variance() + mean * mean, within(ERRORS * error(squares)));
        for (int n = 0; n < 7; n++) {
            int most = n;
            double[] more = Arrays.stream(calls).map(number -> number > most ? 1 : 0).toArray();
            assertThat(average(more)).as("more than %d", n)
                    .isCloseTo(never.calls().chanceOfMoreThan(n), within(ERRORS * error(more) + 1e-4));
        }
        assertThat(average(saved)).isCloseTo(every.chanceCheaperThan(never), within(ERRORS * error(saved) + 1e-4));
        double without = Forecast.of(machines, NEVER, StopPolicy.RESETS, YEAR).calls().mean();
        assertThat(mean).isBetween(0.95 * without, without);
    }

    private static int renewals(Random random, double mean) {
        int number = 0;
        for (double at = -Math.log(1 - random.nextDouble()); at < mean; at -= Math.log(1 - random.nextDouble())) {
            number++;
        }
        return number;
    }

    /** Stops within months of dirt that has an age; each cleans. */
    private static int stops(Random random, double factor, double age, double months) {
        int stops = 0;
        double begins = age;
        double left = months;
        while (true) {
            double hazard = Math.pow(begins / 13.838, 2.5724) - Math.log(1 - random.nextDouble()) / factor;
            double life = 13.838 * Math.pow(hazard, 1 / 2.5724) - begins;
            if (life >= left) {
                return stops;
            }
            stops++;
            left -= life;
            begins = 0;
        }
    }

    private static double average(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double error(double[] values) {
        double mean = average(values);
        return Math.sqrt(Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum()) / values.length;
    }

    /** The same care, cheaper in everything, stays the cheaper one for certain however bad the site. */
    @Test
    void cheaperInEverything_isCheaperForCertain() {
        List<CallKind> cheap = List.of(new CallKind(1, 18000));
        CallTable cheaper = new CallTable(Map.of(Cause.RANDOM, cheap, Cause.CONDENSER, cheap, Cause.WATER, cheap));
        List<MachineRisk> machines = List.of(new MachineRisk(0.5, Optional.of(CLOCK), 4, CLOCK, 9));
        StopPolicy policy = new StopPolicy(1, new SharedFactor(0.6));

        assertThat(Forecast
                .of(machines,
                        new MaintenancePolicy(99000, CleaningSchedule.every(3), CleaningSchedule.every(3), cheaper),
                        policy, YEAR)
                .chanceCheaperThan(Forecast.of(machines,
                        new MaintenancePolicy(100000, CleaningSchedule.every(3), CleaningSchedule.every(3), TABLE),
                        policy, YEAR)))
                .isCloseTo(1, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 0.76, Double.NaN})
    void deviation_outOfBounds_isRefused(double deviation) {
        assertThatIllegalArgumentException().isThrownBy(() -> new SharedFactor(deviation));
    }
}

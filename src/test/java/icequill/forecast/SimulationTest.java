package icequill.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopPolicy;
import icequill.money.Percent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is computed against years drawn by chance: within four standard errors, for sites drawn by chance. Seeds are fixed. */
@Tag("wide")
class SimulationTest {

    private static final int DRAWS = 20_000;
    private static final double ERRORS = 4;

    /** Calls that all clean, none, and some; horizons of 1, 3 and 5 years, intervals that need not divide, ages, one to four machines. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11})
    void site_drawnByChance_agreesWithTheForecast(int number) {
        assertAgrees(number, 20_000);
    }

    /** More of them, and each for longer. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("many")
    void manySites_drawnByChance_agreeWithTheForecast(int number) {
        assertAgrees(number, 200_000);
    }

    static IntStream many() {
        return IntStream.range(0, 72);
    }

    private static void assertAgrees(int number, int draws) {
        Random random = new Random(20261125L + number);
        StopPolicy policy = new StopPolicy(new double[]{1, 0, 1, 0, 0.6, 0}[number % 6]);
        double months = new double[]{12, 36, 60}[number % 3];
        List<MachineRisk> machines = SimulatedSite.machines(random, policy);
        MaintenancePolicy own = new MaintenancePolicy(random.nextInt(60000), SimulatedSite.care(random),
                SimulatedSite.care(random),
                SimulatedSite.table(random));
        MaintenancePolicy other = new MaintenancePolicy(0, CleaningSchedule.NEVER, CleaningSchedule.NEVER,
                SimulatedSite.like(own.calls(), random));
        Forecast forecast = Forecast.of(machines, own, policy, months);
        Forecast rival = Forecast.of(machines, other, policy, months);

        SimulatedSite site = new SimulatedSite(random, machines, policy, months);
        double[] calls = new double[draws];
        double[] charges = new double[draws];
        double[] cheaper = new double[draws];
        for (int i = 0; i < draws; i++) {
            SimulatedSite.Draw draw = site.draw(own, other);
            calls[i] = draw.calls();
            charges[i] = draw.charges();
            cheaper[i] = draw.ownTotal() < draw.otherTotal() ? 1 : 0;
        }

        mean("calls", calls, forecast.calls().mean());
        variance("calls", calls, forecast.calls().variance());
        chance("no call", calls, 0, forecast.calls().chance(0), forecast.calls().chance(0));
        chance("one call at most", calls, 1, 1 - forecast.calls().chanceOfMoreThan(1),
                1 - forecast.calls().chanceOfMoreThan(1));
        MixedDistribution law = forecast.charges();
        mean("charges", charges, law.mean());
        variance("charges", charges, law.deviation() * law.deviation());
        // On a wider lattice each charge is moved by up to a step, so sums by about a step times the root of their number.
        long moved = law.step() <= 2 ? 0 : (long) (3 * law.step() * Math.sqrt(forecast.calls().mean() + 1));
        for (double part : new double[]{0.1, 0.5, 0.9}) {
            long quantile = law.quantile(part);
            chance("charges up to " + quantile, charges, (double) quantile, law.chanceOfAtMost(quantile - moved),
                    law.chanceOfAtMost(quantile + moved));
        }
        chance("being no cheaper", cheaper, 0, 1 - forecast.chanceCheaperThan(rival),
                1 - forecast.chanceCheaperThan(rival));
    }

    private static void mean(String what, double[] values, double expected) {
        assertThat(average(values)).as("mean of " + what).isEqualTo(expected,
                within(ERRORS * Math.sqrt(moment(values, 2) / values.length) + 1e-9));
    }

    private static void variance(String what, double[] values, double expected) {
        double variance = moment(values, 2);
        assertThat(variance).as("variance of " + what).isEqualTo(expected,
                within(ERRORS * Math.sqrt((moment(values, 4) - variance * variance) / values.length) + 1e-9));
    }

    /** Both sides of the chance, where a lattice blurs it. */
    private static void chance(String what, double[] values, double most, double low, double high) {
        double part = (double) Arrays.stream(values).filter(value -> value <= most).count() / values.length;
        assertThat(part).as("chance of " + what).isBetween(low - error(low, values.length),
                high + error(high, values.length));
    }

    private static double error(double chance, int draws) {
        return ERRORS * Math.sqrt(Math.max(0, chance * (1 - chance)) / draws) + ERRORS / draws;
    }

    private static double average(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double moment(double[] values, int power) {
        double mean = average(values);
        return Arrays.stream(values).map(value -> Math.pow(value - mean, power)).sum() / values.length;
    }

    /**
     * The drawing itself, against closed forms of the renewal function: exponential t, Erlang-2 t/2 - 1/4 + e^(-2t)/4, uniform
     * e^t - 1 up to 1, and the larger of two exponentials 2t/3 - (2/9)(1 - e^(-3t)).
     */
    @Test
    void drawing_knownRenewals_meansByTheirClosedForms() {
        Random random = new Random(4);
        DoubleSupplier exponential = () -> -Math.log(1 - random.nextDouble());
        renewals(exponential, 3, 3);
        renewals(() -> exponential.getAsDouble() + exponential.getAsDouble(), 1, 0.283834);
        renewals(() -> exponential.getAsDouble() + exponential.getAsDouble(), 3, 1.250620);
        renewals(random::nextDouble, 0.5, 0.648721);
        renewals(random::nextDouble, 1, 1.718282);
        renewals(() -> larger(exponential), 0.5, 0.160696);
        renewals(() -> larger(exponential), 3, 1.777805);
    }

    private static double larger(DoubleSupplier life) {
        double one = life.getAsDouble();
        return Math.max(one, life.getAsDouble());
    }

    private static void renewals(DoubleSupplier life, double until, double expected) {
        double[] stops = new double[100_000];
        Arrays.setAll(stops, i -> SimulatedSite.renewals(life, until));
        mean("renewals until " + until, stops, expected);
    }

    /** Later years at 3 % dearer prices and 8 % interest, where a call only restarts: mean and spread, drawn year by year. */
    @Test
    void laterYears_callOnlyRestarts_agreeWithDrawnYears() {
        Random random = new Random(11);
        FoulingLife clock = new FoulingLife(2, 9);
        PriceTerms terms = new PriceTerms(Percent.of("3"), Percent.of("8"));
        MaintenancePolicy choice = new MaintenancePolicy(10000, CleaningSchedule.NEVER, CleaningSchedule.NEVER,
                SimulatedSite.table(new Random(5)));
        Forecast forecast = Forecast.of(List.of(new MachineRisk(0.5, Optional.empty(), 0, clock, 0)), choice,
                StopPolicy.RESTARTS, 36, terms);
        double[] charges = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double hazard = -Math.log(1 - random.nextDouble());
            while (hazard < Math.pow(36 / 9.0, 2)) {
                charges[i] += charged(9 * Math.sqrt(hazard), choice.calls().of(Cause.WATER), random);
                hazard -= Math.log(1 - random.nextDouble());
            }
            double at = -24 * Math.log(1 - random.nextDouble());
            while (at < 36) {
                charges[i] += charged(at, choice.calls().of(Cause.RANDOM), random);
                at -= 24 * Math.log(1 - random.nextDouble());
            }
        }

        mean("discounted charges", charges, forecast.charges().mean());
        variance("discounted charges", charges, forecast.charges().deviation() * forecast.charges().deviation());
        // By hand: 100 (1 + 1.03/1.08 + (1.03/1.08)^2) = 286.327...
        assertThat(forecast.planned()).isEqualTo(28633);
    }

    private static double charged(double month, List<CallKind> kinds, Random random) {
        CallKind kind = kinds.get(random.nextDouble() < kinds.getFirst().share() ? 0 : 1);
        return kind.charge() * Math.pow(1.03 / 1.08, Math.floor(month / 12));
    }
}

package icequill.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopPolicy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Calls that are included, against years drawn call by call: the first of a year cost nothing, whatever they are for. It shares nothing with the
 * program. Seeds are fixed.
 */
class IncludedCallsTest {

    private static final int DRAWS = 40_000;

    private record Call(double month, int cause) {}

    private static Forecast forecast(int machines, double faults, FoulingLife clock, CleaningSchedule care,
            int included,
            List<Long> charges) {
        MachineRisk machine = new MachineRisk(faults, Optional.of(clock), 0, clock, 0);
        CallTable table = new CallTable(Map.of(Cause.RANDOM, List.of(new CallKind(1, charges.get(0))),
                Cause.CONDENSER, List.of(new CallKind(1, charges.get(1))),
                Cause.WATER, List.of(new CallKind(1, charges.get(2)))));
        return Forecast.of(Collections.nCopies(machines, machine),
                new MaintenancePolicy(0, List.of(), included, care, care, table), StopPolicy.RESETS, 12);
    }

    private static long[] drawn(int machines, double faults, FoulingLife clock, double every, int included,
            List<Long> charges) {
        Random random = new Random(20261126);
        long[] sums = new long[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            List<Call> calls = new ArrayList<>();
            for (int machine = 0; machine < machines; machine++) {
                for (double at = gap(random, faults); at < 12; at += gap(random, faults)) {
                    calls.add(new Call(at, 0));
                }
                for (int cause = 1; cause <= 2; cause++) {
                    for (double from = 0; from < 12; from += every) {
                        double at = from + life(random, clock);
                        while (at < Math.min(12, from + every)) {
                            calls.add(new Call(at, cause));
                            at += life(random, clock);
                        }
                    }
                }
            }
            calls.sort((one, other) -> Double.compare(one.month(), other.month()));
            sums[i] = calls.stream().skip(included).mapToLong(call -> charges.get(call.cause())).sum();
        }
        return sums;
    }

    private static double gap(Random random, double faults) {
        return -12 / faults * Math.log(1 - random.nextDouble());
    }

    private static double life(Random random, FoulingLife clock) {
        return clock.scale() * Math.pow(-Math.log(1 - random.nextDouble()), 1 / clock.shape());
    }

    /**
     * One dear cause, thirty times as dear as the others: which cause the calls have that come late in a year decides. Means within four
     * standard errors and half a percent; the chance of no more than P90 within what the owner's page says.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.25, 2.5, 12, 6, 1", "1, 0.25, 2.5, 12, 6, 2", "4, 0.25, 2.5, 9, 6, 1", "4, 0.25, 2.5, 9, 6, 4",
            "2, 0.5, 4, 10, 12, 1", "2, 0.5, 4, 10, 12, 2", "1, 0.3, 4, 10, 12, 1"})
    void oneCauseThirtyTimesAsDear_meansAreRight(int machines, double faults, double shape, double scale,
            double every, int included) {
        FoulingLife clock = new FoulingLife(shape, scale);
        for (List<Long> charges : List.of(List.of(10000L, 10000L, 300000L), List.of(300000L, 10000L, 10000L))) {
            long[] sums = drawn(machines, faults, clock, every, included, charges);
            double mean = Arrays.stream(sums).average().orElseThrow();
            double error = Math.sqrt(Arrays.stream(sums).mapToDouble(sum -> Math.pow(sum - mean, 2)).average()
                    .orElseThrow() / DRAWS);

            MixedDistribution law = forecast(machines, faults, clock, CleaningSchedule.every(every), included, charges)
                    .charges();

            assertThat(law.mean()).as(charges.toString()).isEqualTo(mean, within(4 * error + mean / 200));
            long far = law.quantile(0.9);
            assertThat(Arrays.stream(sums).filter(sum -> sum <= far).count() / (double) DRAWS)
                    .as("up to " + far + " by " + charges).isBetween(0.85, 0.99);
        }
    }

    /** As shops charge: the dearest call costs 1.6 times the cheapest, and P90 holds nine years in ten but for the steps of so few sums. */
    @ParameterizedTest
    @CsvSource({"1, 0.25, 2.5, 12, 6, 1", "4, 0.25, 2.5, 9, 6, 2", "2, 0.5, 4, 10, 12, 1"})
    void usualCharges_holdTheirRange(int machines, double faults, double shape, double scale, double every,
            int included) {
        FoulingLife clock = new FoulingLife(shape, scale);
        List<Long> charges = List.of(20000L, 16000L, 26000L);
        long[] sums = drawn(machines, faults, clock, every, included, charges);

        MixedDistribution law = forecast(machines, faults, clock, CleaningSchedule.every(every), included, charges)
                .charges();

        assertThat(law.mean()).isEqualTo(Arrays.stream(sums).average().orElseThrow(), within(law.mean() / 100));
        for (int percent : new int[]{50, 80, 90, 95}) {
            long most = law.quantile(percent / 100.0);
            double drawn = Arrays.stream(sums).filter(sum -> sum <= most).count() / (double) DRAWS;
            assertThat(drawn).as(percent + " up to " + most).isBetween(law.chanceOfAtMost(most) - 0.04,
                    law.chanceOfAtMost(most) + 0.04);
        }
    }

    /** Random faults alone come at any time, so each after the first is as dear as any. */
    @Test
    void randomFaultsAlone_meanIsThatOfThePoissonTail() {
        FoulingLife never = new FoulingLife(3, 1e6);
        Forecast forecast = forecast(1, 1.5, never, CleaningSchedule.NEVER, 1, List.of(20000L, 10000L, 10000L));

        assertThat(forecast.charges().mean()).isEqualTo(20000 * (1.5 - (1 - Math.exp(-1.5))), within(0.5));
    }
}

package icequill.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopCounts;
import icequill.forecast.stops.StopPolicy;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** What must hold for every site. Seeds are fixed, so that a run repeats. */
class ForecastPropertiesTest {

    private static final double YEARS = 36;

    /** Beyond the promise of nine digits, for the many intervals that are added up. */
    private static final double ROUNDING = 1e-7;

    @Provide
    Arbitrary<StopPolicy> policies() {
        return Arbitraries.of(StopPolicy.RESETS, StopPolicy.RESTARTS);
    }

    private static CallTable table(long charge) {
        List<CallKind> kinds = List.of(new CallKind(0.7, charge), new CallKind(0.3, 2 * charge + 137));
        return new CallTable(Map.of(Cause.RANDOM, kinds, Cause.CONDENSER, kinds, Cause.WATER, kinds));
    }

    private static Forecast forecast(List<MachineRisk> machines, long planned, CleaningSchedule care, long charge,
            StopPolicy policy) {
        return Forecast.of(machines, new MaintenancePolicy(planned, care, care, table(charge)), policy, YEARS);
    }

    /** A shorter interval that divides the longer one never means more stops, where dirt never gets safer with time. */
    @Property(seed = "20261101")
    void interval_divided_neverMoreStops(@ForAll @DoubleRange(min = 1, max = 5) double shape,
            @ForAll @DoubleRange(min = 12, max = 40) double scale, @ForAll @IntRange(min = 4, max = 36) int months,
            @ForAll @IntRange(min = 2, max = 6) int parts, @ForAll("policies") StopPolicy policy) {
        FoulingLife clock = new FoulingLife(shape, scale);

        double longer = new StopCounts(clock, policy, YEARS, CleaningSchedule.every(months)).of(0).mean();
        double shorter = new StopCounts(clock, policy, YEARS, CleaningSchedule.every((double) months / parts)).of(0)
                .mean();

        assertThat(shorter).isLessThanOrEqualTo(longer * (1 + ROUNDING) + ROUNDING);
    }

    @Property(seed = "20261102")
    void chances_anySite_addUpToOneAndQuantilesRise(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        StopPolicy policy = random.nextBoolean() ? StopPolicy.RESETS : StopPolicy.RESTARTS;
        Forecast forecast = forecast(SimulatedSite.machines(random, policy), random.nextInt(90000),
                SimulatedSite.care(random), 12345 + random.nextInt(20000), policy);

        CountDistribution calls = forecast.calls();
        double sum = 0;
        for (int n = 0; n <= calls.most(); n++) {
            assertThat(calls.chance(n)).isBetween(0.0, 1.0);
            sum += calls.chance(n);
        }
        assertThat(sum).isEqualTo(1, within(1e-9));
        MixedDistribution total = forecast.total();
        assertThat(total.chanceOfAtMost(Long.MAX_VALUE / 2)).isEqualTo(1, within(1e-9));
        long before = forecast.planned();
        for (int percent = 1; percent < 100; percent++) {
            long quantile = total.quantile(percent / 100.0);
            assertThat(quantile).isGreaterThanOrEqualTo(before);
            assertThat(total.chanceOfAtMost(quantile)).isGreaterThanOrEqualTo(percent / 100.0 - 1e-9);
            assertThat(total.chanceOfAtMost(quantile - 1)).isLessThan(percent / 100.0 + 1e-9);
            before = quantile;
        }
    }

    /** So many alike machines expect so many times the calls and the charges, and the variances add up. */
    @Property(seed = "20261103")
    void machines_more_costInProportion(@ForAll @IntRange(min = 2, max = 40) int number,
            @ForAll @DoubleRange(min = 0, max = 2) double random, @ForAll @DoubleRange(min = 0, max = 20) double age,
            @ForAll("policies") StopPolicy policy) {
        MachineRisk machine = new MachineRisk(random, Optional.of(new FoulingLife(2, 15)), age,
                new FoulingLife(2.5, 20),
                age / 2);
        CleaningSchedule care = CleaningSchedule.every(7);

        Forecast one = forecast(List.of(machine), 0, care, 20000, policy);
        Forecast many = forecast(Collections.nCopies(number, machine), 0, care, 20000, policy);

        assertThat(many.calls().mean()).isEqualTo(number * one.calls().mean(), within(ROUNDING));
        assertThat(many.charges().mean()).isEqualTo(number * one.charges().mean(), within(1e-2));
        assertThat(Math.pow(many.charges().deviation(), 2))
                .isEqualTo(number * Math.pow(one.charges().deviation(), 2),
                        within(1e-6 * Math.pow(many.charges().deviation(), 2)));
    }

    /** Where calls are rare and cheap, paying for them is expected to cost less than an agreement, and all but surely does. */
    @Property(seed = "20261104")
    void calls_rareAndCheap_payingForThemBeatsTheAgreement(@ForAll @DoubleRange(min = 60, max = 200) double scale,
            @ForAll @LongRange(min = 1000, max = 9000) long charge,
            @ForAll @LongRange(min = 30000, max = 90000) long agreement) {
        List<MachineRisk> machines = List
                .of(new MachineRisk(0.1, Optional.of(new FoulingLife(3, scale)), 0, new FoulingLife(3, scale), 0));

        Forecast paid = forecast(machines, 0, CleaningSchedule.NEVER, charge, StopPolicy.RESETS);
        Forecast agreed = forecast(machines, agreement, CleaningSchedule.every(6), charge, StopPolicy.RESETS);

        assertThat(paid.total().mean()).isLessThan(agreed.total().mean());
        assertThat(agreed.chanceCheaperThan(paid)).isLessThan(0.05);
        assertThat(paid.chanceCheaperThan(agreed)).isGreaterThan(0.95);
    }

    /** One more included call a year never makes charges dearer on average; of one year, neither in cheap years nor in dear ones. */
    @Property(seed = "20261106")
    void included_more_neverDearer(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        StopPolicy policy = random.nextBoolean() ? StopPolicy.RESETS : StopPolicy.RESTARTS;
        List<MachineRisk> machines = SimulatedSite.machines(random, policy);
        CleaningSchedule care = SimulatedSite.care(random);
        CallTable charges = new CallTable(Map.of(Cause.RANDOM, kinds(random), Cause.CONDENSER, kinds(random),
                Cause.WATER, kinds(random)));
        double months = random.nextBoolean() ? 12 : YEARS;
        MixedDistribution fewer = including(0, machines, care, charges, policy, months);

        for (int included = 1; included <= 3; included++) {
            MixedDistribution more = including(included, machines, care, charges, policy, months);

            assertThat(more.mean()).as("%d included", included).isLessThanOrEqualTo(fewer.mean() * (1 + ROUNDING));
            for (int percent = 1; percent < 100 && months == 12; percent++) {
                long cheaper = more.quantile(percent / 100.0);
                assertThat(cheaper).as("%d included, of %d in 100 years", included, percent)
                        .isLessThanOrEqualTo(fewer.quantile(percent / 100.0) + 2 * Math.max(more.step(), fewer.step()));
            }
            fewer = more;
        }
    }

    private static MixedDistribution including(int included, List<MachineRisk> machines, CleaningSchedule care,
            CallTable charges,
            StopPolicy policy, double months) {
        return Forecast.of(machines, new MaintenancePolicy(0, List.of(), included, care, care, charges), policy, months)
                .charges();
    }

    private static List<CallKind> kinds(Random random) {
        return List.of(new CallKind(0.75, 5000L + random.nextInt(30000)),
                new CallKind(0.25, 5000L + random.nextInt(60000)));
    }
}

package icequill.forecast.stops;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.oracle.GridStops;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stops where dirt outlives cleanings or calls, against the renewal process, closed forms, and sums on a grid. */
class StopChainTest {

    private static final FoulingLife CLOCK = new FoulingLife(2.5724, 13.838);
    private static final double YEARS = 36;

    /** Cleanings that restore nothing change nothing, so a chain over many stretches is the renewal process over one. */
    @ParameterizedTest
    @CsvSource({"2.5724, 13.838, 36, 0, 1", "2.5724, 13.838, 36, 12, 6", "1.3, 9, 36, 7, 12", "1.3, 9, 36, 0, 3",
            "1.05, 9, 24, 0, 3", "4, 8, 36, 20, 6", "6, 10, 60, 3, 5", "10, 12, 48, 3, 4", "10, 4, 12, 120, 1",
            "2, 3, 60, 1, 4"})
    void chain_cleaningsThatRestoreNothing_isTheRenewalProcess(double shape, double scale, double months, double age,
            int stretches) {
        FoulingLife clock = new FoulingLife(shape, scale);
        CountDistribution renewals = RenewalSeries.of(clock, months).counts(age, months);

        CountDistribution chain = new StopChain(clock, 1,
                new Stretches(Collections.nCopies(stretches, months / stretches), 1)).counts(age);

        for (int n = 0; n <= renewals.most(); n++) {
            assertThat(chain.chance(n)).as("chance of " + n).isEqualTo(renewals.chance(n), within(1e-8));
        }
    }

    /** 400,000 simulated sites gave 0.383 and 0.874 where 80 % and 50 % are restored; here sums on a grid, to six digits. */
    @ParameterizedTest
    @CsvSource({"0.8, 3, 0, 0.383", "0.5, 3, 0, 0.874", "0.7, 5, 9, 0", "0.3, 12, 4, 0"})
    void cleanings_thatLeaveDirt_heapItUp(double restores, double every, double age, double simulated) {
        CleaningSchedule care = new CleaningSchedule(every, restores);
        double[] grid = new GridStops(2.5724, 13.838, care.until(YEARS), restores).chances(age, YEARS, 720);

        CountDistribution counts = new StopCounts(CLOCK, StopPolicy.RESETS, YEARS, care).of(age);

        assertThat(counts.mean()).isEqualTo(GridStops.mean(grid), within(2e-6));
        for (int n = 0; n <= counts.most(); n++) {
            assertThat(counts.chance(n)).as("chance of " + n).isEqualTo(grid[n], within(2e-6));
        }
        if (simulated > 0) {
            assertThat(counts.mean()).isEqualTo(simulated, within(4 * Math.sqrt(counts.variance() / 400_000)));
        }
    }

    /**
     * Where calls only restart, stops are Poisson with the hazards between cleanings, whose ages are a -> (1 - r)(a + k): 400,000
     * simulated sites gave 3.46 and 3.557.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 6, 12, 3.46", "0.2, 3, 0, 3.557"})
    void restarts_cleaningsThatLeaveDirt_heapItUp(double restores, double every, double age, double simulated) {
        double hazard = 0;
        double dirt = age;
        for (double month = 0; month < YEARS; month += every) {
            dirt *= 1 - restores;
            hazard += Math.pow((dirt + every) / 13.838, 2.5724) - Math.pow(dirt / 13.838, 2.5724);
            dirt += every;
        }

        CountDistribution counts = new StopCounts(CLOCK, StopPolicy.RESTARTS, YEARS,
                new CleaningSchedule(every, restores)).of(age);

        assertThat(counts.mean()).isEqualTo(hazard, within(1e-9));
        assertThat(counts.mean()).isEqualTo(simulated, within(4 * Math.sqrt(hazard / 400_000) + 5e-4));
    }

    /** At a shape of 1 dirt has no memory: whatever cleans, stops are Poisson. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.5, 0", "0.7, 1, 5", "0.05, 0.9, 11"})
    void mixture_shapeOne_isPoisson(double cleans, double restores, double age) {
        CountDistribution counts = new StopCounts(new FoulingLife(1, 4), new StopPolicy(cleans), YEARS,
                new CleaningSchedule(6, restores))
                .of(age);
        CountDistribution poisson = CountDistribution.poisson(YEARS / 4);

        for (int n = 0; n <= poisson.most(); n++) {
            assertThat(counts.chance(n)).as("chance of " + n).isEqualTo(poisson.chance(n), within(1e-6));
        }
    }

    /**
     * Calls that clean come by a clock slower by the part that cleans to the power of 1 / shape, and each stands for 1 / part stops on
     * average (optional stopping of the compensated process): a mean by the renewal process alone.
     */
    @ParameterizedTest
    @CsvSource({"0.3, 12", "0.5, 0", "0.8, 30"})
    void mixture_anyPart_meanByASlowerClock(double cleans, double age) {
        FoulingLife slower = CLOCK.faster(Math.pow(cleans, 1 / CLOCK.shape()));

        assertThat(new StopCounts(CLOCK, new StopPolicy(cleans), YEARS, CleaningSchedule.NEVER).of(age).mean())
                .isEqualTo(RenewalSeries.of(slower, YEARS).counts(age, YEARS).mean() / cleans, within(1e-7));
    }

    /** Between all calls and none that clean lie all parts of them, and near the ends the ends. */
    @Test
    void mixture_betweenItsEnds_risesAsFewerCallsClean() {
        double before = new StopCounts(CLOCK, StopPolicy.RESETS, YEARS, CleaningSchedule.NEVER).of(12).mean();
        assertThat(mixed(1 - 1e-9)).isEqualTo(before, within(1e-6));
        for (double cleans = 0.95; cleans > 0; cleans -= 0.1) {
            assertThat(mixed(cleans)).isGreaterThan(before);
            before = mixed(cleans);
        }
        double none = new StopCounts(CLOCK, StopPolicy.RESTARTS, YEARS, CleaningSchedule.NEVER).of(12).mean();
        assertThat(none).isGreaterThan(before);
        assertThat(mixed(1e-9)).isEqualTo(none, within(1e-5));
    }

    private static double mixed(double cleans) {
        return new StopCounts(CLOCK, new StopPolicy(cleans), YEARS, CleaningSchedule.NEVER).of(12).mean();
    }

    /** Dirt of years on steep clocks stops a machine within hours; on cells that are drawn to the beginning the grid agrees to seven digits. */
    @ParameterizedTest
    @CsvSource({"6.093130733679077, 8.436991968554809, 44.583162, 12",
            "4.787645666588098, 8.451108710483654, 46.390144, 36",
            "3.90422207981374, 10.306224557416572, 60.550308, 36"})
    void yearsOfDirt_onSteepClocks_agreeWithTheGrid(double shape, double scale, double age, double months) {
        double[] grid = new GridStops(shape, scale, List.of(), 1).chances(age, months, 720);

        CountDistribution counts = new StopCounts(new FoulingLife(shape, scale), StopPolicy.RESETS, months,
                CleaningSchedule.NEVER).of(age);

        assertThat(counts.mean()).isEqualTo(GridStops.mean(grid), within(1e-7));
        for (int n = 0; n <= counts.most(); n++) {
            assertThat(counts.chance(n)).as("chance of " + n).isEqualTo(grid[n], within(1e-7));
        }
    }

    /** Old dirt stops a machine at once, and then its clock begins anew: computed 3.762 for shape 10, scale 4 and 120 months. */
    @ParameterizedTest
    @CsvSource({"10, 4, 120, 12, 3.762", "10, 4, 600, 12, 0", "2.5724, 13.838, 440, 12, 0",
            "2.5724, 13.838, 1500, 36, 0"})
    void oldDirt_stopsAtOnceAndBeginsAnew(double shape, double scale, double age, double months, double expected) {
        FoulingLife clock = new FoulingLife(shape, scale);
        // What is left after the first stop, which comes about 1 / rate after the beginning.
        double first = 1 / clock.rate(age);
        double[] anew = new GridStops(shape, scale, List.of(), 1).chances(0, months - first, 2000);

        CountDistribution counts = new StopCounts(clock, StopPolicy.RESETS, months, CleaningSchedule.NEVER).of(age);

        assertThat(counts.mean()).isEqualTo(1 + GridStops.mean(anew), within(1e-4));
        if (expected > 0) {
            assertThat(counts.mean()).isEqualTo(expected, within(5e-4));
        }
    }

    /** A machine that runs June to August and is cleaned each June has the stops of three months a year. */
    @Test
    void season_machinesIdleOutOfIt_neitherAgeNorStop() {
        Season summer = new Season(List.of(new Season.Stretch(1, 4, 1)));
        CleaningSchedule everyJune = new CleaningSchedule(List.of(1.0), 12, 1);
        CountDistribution counts = new StopCounts(CLOCK, StopPolicy.RESETS, Stretches.of(everyJune, summer, YEARS))
                .of(2);
        CountDistribution three = RenewalSeries.of(CLOCK, 3).counts(0, 3).times(3);

        assertThat(counts.mean()).isEqualTo(three.mean(), within(1e-9));
        // Never cleaned it runs nine months in three years.
        assertThat(new StopCounts(CLOCK, StopPolicy.RESETS, Stretches.of(CleaningSchedule.NEVER, summer, YEARS)).of(2)
                .mean())
                .isEqualTo(RenewalSeries.of(CLOCK, 9).counts(2, 9).mean(), within(1e-9));
    }

    /** Cleanings on the days of a real calendar: months 2 and 8 of each year, and the dirt there was before. */
    @Test
    void calendar_realDays_partTheHorizon() {
        double[] grid = new GridStops(2.5724, 13.838, List.of(2.0, 8.0, 14.0, 20.0), 1).chances(7, 24, 720);

        assertThat(new StopCounts(CLOCK, StopPolicy.RESETS, 24, new CleaningSchedule(List.of(2.0, 8.0), 12, 1)).of(7)
                .mean())
                .isEqualTo(GridStops.mean(grid), within(2e-6));
    }

    /** A cleaning that restores more never means more calls, where dirt never gets safer with time. */
    @Property(seed = "20261126")
    void restoring_more_neverMoreStops(@ForAll @DoubleRange(min = 1, max = 6) double shape,
            @ForAll @DoubleRange(min = 8, max = 30) double scale, @ForAll @IntRange(min = 2, max = 18) int months,
            @ForAll @DoubleRange(min = 0.05, max = 0.9) double less,
            @ForAll @DoubleRange(min = 0.02, max = 0.1) double more,
            @ForAll @DoubleRange(min = 0, max = 20) double age, @ForAll @DoubleRange(min = 0, max = 1) double cleans) {
        FoulingLife clock = new FoulingLife(shape, scale);
        StopPolicy policy = new StopPolicy(cleans);

        double fewer = new StopCounts(clock, policy, YEARS, new CleaningSchedule(months, less + more)).of(age).mean();
        double stops = new StopCounts(clock, policy, YEARS, new CleaningSchedule(months, less)).of(age).mean();

        assertThat(fewer).isLessThanOrEqualTo(stops * (1 + 1e-7) + 1e-7);
    }
}

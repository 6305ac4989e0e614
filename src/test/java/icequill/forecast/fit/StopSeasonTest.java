package icequill.forecast.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.RatesFixture;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.Pace;
import icequill.party.SiteKind;
import icequill.problem.Place;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Seasons of stops: by hand, against the bare likelihood, and in records drawn day by day. Seeds are fixed. */
@Tag("wide")
class StopSeasonTest {

    private static final SiteKind BAR = RatesFixture.kind("bar");
    private static final double DAYS_OF_A_MONTH = 365.25 / 12;
    private static final FoulingLife CLOCK = new FoulingLife(2.5, 13);

    private static DatedRun run(LocalDate from, LocalDate until, boolean stopped) {
        return new DatedRun(BAR, days(from), from, days(until), stopped, 1, Place.NOWHERE);
    }

    private static DatedRun.Days days(LocalDate day) {
        return new DatedRun.Days(day, day);
    }

    private static List<Run> at(Pace pace, List<DatedRun> runs) {
        return runs.stream().map(run -> run.at(pace)).toList();
    }

    private static Fit.Found fit(List<DatedRun> runs, Pace pace) {
        return (Fit.Found) WeibullFit.of(at(pace, runs)).orElseThrow();
    }

    private static StopSeason season(List<DatedRun> runs) {
        return new SeasonSearch(runs, Pace.EVEN).with(fit(runs, Pace.EVEN).clock());
    }

    /**
     * By hand, with a clock that does not age: forty machines watched for the whole of 2025 (90, 91, 92 and 92 days), of which so many
     * stop on the last day of a quarter as are listed, count 40, 35, 25 and 20 machines in its quarters.
     */
    @Test
    void quarters_clockWithoutAge_areMachineDaysInProportion() {
        List<DatedRun> runs = new ArrayList<>();
        List<LocalDate> ends = List.of(LocalDate.of(2025, 4, 1), LocalDate.of(2025, 7, 1), LocalDate.of(2025, 10, 1),
                LocalDate.of(2026, 1, 1));
        int[] stops = {5, 10, 5, 10};
        for (int quarter = 0; quarter < 4; quarter++) {
            for (int i = 0; i < stops[quarter]; i++) {
                runs.add(run(LocalDate.of(2025, 1, 1), ends.get(quarter).minusDays(1), true));
            }
        }
        IntStream.range(0, 10).forEach(i -> runs.add(run(LocalDate.of(2025, 1, 1), ends.getLast(), false)));

        StopSeason.LookedAt found = (StopSeason.LookedAt) new SeasonSearch(runs, Pace.EVEN)
                .with(new FoulingLife(1, 20));

        double[] days = {40 * 90.0 - 5, 35 * 91.0 - 10, 25 * 92.0 - 5, 20 * 92.0 - 10};
        double all = IntStream.range(0, 4).mapToDouble(q -> days[q]).sum();
        double chiSquare = 0;
        for (int q = 0; q < 4; q++) {
            double expected = 30 * days[q] / all;
            chiSquare += (stops[q] - expected) * (stops[q] - expected) / expected;
            assertThat(found.quarters().get(q).stops()).isEqualTo(stops[q]);
            assertThat(found.quarters().get(q).expected()).isEqualTo(expected, within(1e-9));
        }
        assertThat(found.chiSquare()).isEqualTo(chiSquare, within(1e-9)).isEqualTo(7.8, within(0.1));
        assertThat(found).isInstanceOf(StopSeason.NoneFound.class);
    }

    /** NIST/SEMATECH e-Handbook 1.3.6.7.4 prints 11.345 for three degrees of freedom at 0.99. */
    @Test
    void threshold_chiSquareOfThreeDegrees_isPassedOnceInAHundredTimes() {
        assertThat(Gamma.regularizedGammaQ(1.5, StopSeason.THRESHOLD / 2)).isEqualTo(0.01, within(1e-6));
    }

    /** Three stops in winter would be expected at most, which is too few for chi-square. */
    @Test
    void fewStops_areNotLookedAt() {
        List<DatedRun> runs = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            runs.add(run(LocalDate.of(2024, 1 + i, 3), LocalDate.of(2024, 1 + i, 3).plusDays(150 + 9L * i), true));
        }

        assertThat(season(runs)).isEqualTo(new StopSeason.NotLookedAt());
    }

    /** Day by day: dirt grows by the speed of the month, and the machine stops by what the hazard grew. Shares nothing with the program. */
    private static List<DatedRun> drawn(int machines, double[] speeds, Random random) {
        List<DatedRun> runs = new ArrayList<>();
        LocalDate end = LocalDate.of(2026, 1, 1);
        for (int i = 0; i < machines; i++) {
            LocalDate day = LocalDate.of(2021, 1, 1).plusDays(random.nextInt(365));
            LocalDate from = day;
            double age = 0;
            int cleanedAfter = 150 + random.nextInt(300);
            while (day.isBefore(end)) {
                double later = age + speeds[(day.getMonthValue() - 1) / 3] / DAYS_OF_A_MONTH;
                double hazard = Math.pow(later / CLOCK.scale(), CLOCK.shape())
                        - Math.pow(age / CLOCK.scale(), CLOCK.shape());
                age = later;
                day = day.plusDays(1);
                boolean stopped = random.nextDouble() < 1 - Math.exp(-hazard);
                if (stopped || from.plusDays(cleanedAfter).equals(day) || day.equals(end)) {
                    runs.add(run(from, day, stopped));
                    from = day;
                    age = 0;
                }
            }
        }
        return runs;
    }

    /** About 600 stops, so that a factor is off by about its root of a quarter of them: 4 standard errors. */
    @Test
    void seasonThatRecordsShow_comesBackWithItsClock() {
        double[] speeds = {0.5, 0.9, 1.7, 0.9};
        List<DatedRun> runs = drawn(250, speeds, new Random(20261126));

        StopSeason.Found found = (StopSeason.Found) season(runs);

        for (int q = 0; q < 4; q++) {
            assertThat(found.factors().get(q).doubleValue()).as("quarter " + q).isEqualTo(speeds[q], within(0.2));
        }
        assertThat(found.factors().stream().reduce(BigDecimal.ZERO, BigDecimal::add)).isEqualByComparingTo("4");
        assertThat(found.chiSquare()).isGreaterThan(100);
        Pace pace = pace(found.factors());
        assertThat(fit(runs, pace).clock().shape()).isEqualTo(2.5, within(0.3));
        assertThat(fit(runs, pace).clock().scale()).isEqualTo(13, within(0.6));
        // Where months count so, nothing is left to find.
        assertThat(new SeasonSearch(runs, pace).with(fit(runs, pace).clock())).isInstanceOf(StopSeason.NoneFound.class);
    }

    private static Pace pace(List<BigDecimal> factors) {
        return Pace.ofQuarters(factors.stream().map(BigDecimal::doubleValue).toList());
    }

    /** The bare likelihood, with ages added up day by day, is nowhere greater around the factors and the clock that were found. */
    @Test
    void factors_topOfTheBareLikelihood() {
        List<DatedRun> runs = drawn(60, new double[]{0.4, 1, 1.8, 0.8}, new Random(5));
        StopSeason.Found found = (StopSeason.Found) season(runs);
        double[] factors = found.factors().stream().mapToDouble(BigDecimal::doubleValue).toArray();
        FoulingLife clock = fit(runs, pace(found.factors())).clock();
        double best = bare(runs, factors, clock);

        for (int up = 0; up < 4; up++) {
            for (int down = 0; down < 4; down++) {
                if (up != down) {
                    double[] tried = factors.clone();
                    tried[up] += 0.04;
                    tried[down] -= 0.04;
                    double refitted = Double.NEGATIVE_INFINITY;
                    for (double shape = 0.98; shape <= 1.021; shape += 0.01) {
                        for (double scale = 0.98; scale <= 1.021; scale += 0.01) {
                            refitted = Math.max(refitted, bare(runs, tried,
                                    new FoulingLife(clock.shape() * shape, clock.scale() * scale)));
                        }
                    }
                    assertThat(refitted).as(up + " up, " + down + " down").isLessThan(best);
                }
            }
        }
    }

    private static double bare(List<DatedRun> runs, double[] speeds, FoulingLife clock) {
        double sum = 0;
        for (DatedRun run : runs) {
            double age = 0;
            LocalDate end = run.until().first();
            for (LocalDate day = run.since().first(); day.isBefore(end); day = day.plusDays(1)) {
                age += speeds[(day.getMonthValue() - 1) / 3] / day.lengthOfMonth();
            }
            sum -= Math.pow(age / clock.scale(), clock.shape());
            if (run.stopped()) {
                sum += Math.log(speeds[(end.getMonthValue() - 1) / 3] * clock.shape() / clock.scale()
                        * Math.pow(age / clock.scale(), clock.shape() - 1));
            }
        }
        return sum;
    }

    /** Of 25 tables without a season a quarter of one is taken for one with it; four standard errors are 2. */
    @Test
    void tablesWithoutASeason_areTakenForOneHardlyEver() {
        assertHardlyEver(25, 2);
    }

    /** Of 100 one; four standard errors are 4. */
    @Tag("long")
    @Test
    void manyTablesWithoutASeason_areTakenForOneHardlyEver() {
        assertHardlyEver(100, 5);
    }

    private static void assertHardlyEver(int tables, int most) {
        Random random = new Random(77);
        int alarms = 0;
        int looked = 0;
        for (int i = 0; i < tables; i++) {
            StopSeason season = season(drawn(25, new double[]{1, 1, 1, 1}, random));
            alarms += season instanceof StopSeason.Found ? 1 : 0;
            looked += season instanceof StopSeason.LookedAt ? 1 : 0;
        }

        assertThat(looked).isGreaterThanOrEqualTo(tables - 1);
        assertThat(alarms).isBetween(0, most);
    }

    /** Known to the month, taken over with unknown stops before, at a site where dirt works half as fast again: the season shows all the same. */
    @Test
    void monthsAndLateEntries_showTheSeasonToo() {
        List<DatedRun> runs = drawn(100, new double[]{0.5, 0.9, 1.7, 0.9}, new Random(11)).stream()
                .filter(run -> run.until().first().isAfter(run.since().first().plusDays(90)))
                .map(run -> new DatedRun(run.kind(), month(run.since().first()), run.since().first().plusDays(60),
                        month(run.until().first()), run.stopped(), 1.5, run.place()))
                .toList();

        StopSeason.Found found = (StopSeason.Found) season(runs);

        assertThat(found.factors().get(0).doubleValue()).isEqualTo(0.5, within(0.25));
        assertThat(found.factors().get(2).doubleValue()).isEqualTo(1.7, within(0.4));
    }

    private static DatedRun.Days month(LocalDate day) {
        return new DatedRun.Days(day.withDayOfMonth(1), day.withDayOfMonth(day.lengthOfMonth()));
    }

    /** A quarter without any stop would stand still; its factor stays above 0. */
    @Test
    void quarterWithoutStops_keepsAFactorAboveZero() {
        List<DatedRun> runs = drawn(60, new double[]{0.001, 1.2, 1.6, 1.2}, new Random(3));

        StopSeason.Found found = (StopSeason.Found) season(runs);

        assertThat(Collections.min(found.factors())).isGreaterThanOrEqualTo(new BigDecimal("0.05"));
        assertThat(found.factors().stream().reduce(BigDecimal.ZERO, BigDecimal::add)).isEqualByComparingTo("4");
    }
}

package icequill.forecast.stops;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.CallKind;
import icequill.forecast.CallTable;
import icequill.forecast.Cause;
import icequill.forecast.Forecast;
import icequill.forecast.MaintenancePolicy;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Months that count more than others: by hand, and years that are walked through day by day. */
@Tag("wide")
class PaceTest {

    private static final List<Double> QUARTERS = List.of(0.4, 0.9, 1.8, 0.9);
    private static final Pace SUMMER = Pace.ofQuarters(QUARTERS);
    private static final FoulingLife CLOCK = new FoulingLife(2.5, 12);
    private static final CallTable CALLS = new CallTable(Map.of(Cause.RANDOM, List.of(new CallKind(1, 20000)),
            Cause.CONDENSER, List.of(new CallKind(1, 20000)), Cause.WATER, List.of(new CallKind(1, 20000))));

    /** By hand: half of March, April to June, and ten of July's 31 days. */
    @Test
    void between_brokenMonths_countByTheirDays() {
        assertThat(SUMMER.between(LocalDate.of(2026, 3, 17), LocalDate.of(2026, 7, 11)))
                .isEqualTo(0.4 * 15 / 31 + 3 * 0.9 + 1.8 * 10 / 31, within(1e-12));
        assertThat(SUMMER.between(LocalDate.of(2023, 5, 9), LocalDate.of(2026, 5, 9))).isEqualTo(36, within(1e-9));
        assertThat(SUMMER.aYear()).isEqualTo(12, within(1e-12));
    }

    /** By hand: a site that is open from June to September, one month of spring and three of summer. */
    @Test
    void times_openMonths_countOnlyThere() {
        List<Double> open = new ArrayList<>(Collections.nCopies(12, 0.0));
        List.of(5, 6, 7, 8).forEach(month -> open.set(month, 1.0));
        Pace pace = new Pace(open).times(SUMMER);

        assertThat(pace.aYear()).isEqualTo(0.9 + 3 * 1.8, within(1e-12));
        assertThat(pace.between(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 7, 1))).isEqualTo(0.9, within(1e-12));
        Season season = pace.from(LocalDate.of(2026, 3, 1));
        assertThat(season.run(3)).isZero();
        assertThat(season.run(5)).isEqualTo(0.9 + 1.8, within(1e-12));
        assertThat(season.run(24)).isEqualTo(2 * (0.9 + 3 * 1.8), within(1e-12));
    }

    /** From any day on a forecast counts as the calendar does. */
    @ParameterizedTest
    @CsvSource({"2026-01-01, 2026-07-01", "2026-05-09, 2027-02-28", "2024-02-29, 2031-12-11", "2026-11-30, 2026-12-01"})
    void from_anyDay_runsAsTheDaysBetween(LocalDate start, LocalDate until) {
        assertThat(SUMMER.from(start).run(Pace.position(start, until)))
                .isEqualTo(SUMMER.between(start, until), within(1e-9));
    }

    @Test
    void from_evenMonths_isAllYear() {
        assertThat(Pace.EVEN.from(LocalDate.of(2026, 5, 9))).isEqualTo(Season.ALL_YEAR);
        assertThat(Pace.EVEN.times(Pace.ofQuarters(List.of(1.0, 1.0, 1.0, 1.0)))).isEqualTo(Pace.EVEN);
        assertThatIllegalArgumentException().isThrownBy(() -> new Pace(Collections.nCopies(12, 0.0)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Pace(List.of(1.0)));
    }

    private static MachineRisk machine(double faults, double age, LocalDate start) {
        Season season = SUMMER.from(start);
        return new MachineRisk(faults, Optional.empty(), 0, CLOCK, age,
                new MachineRisk.Seasons(season, Season.ALL_YEAR, season));
    }

    private static Forecast forecast(MachineRisk machine, CleaningSchedule care, StopPolicy policy, double months) {
        return Forecast.of(List.of(machine), new MaintenancePolicy(0, care, CleaningSchedule.NEVER, CALLS), policy,
                months);
    }

    /** The sum of a year's random faults stays whatever the season, and wherever the year begins. */
    @ParameterizedTest
    @CsvSource({"2026-01-01", "2026-05-09", "2026-08-20"})
    void randomFaults_ofAYear_stayAsMany(LocalDate start) {
        Forecast year = forecast(machine(0.7, 0, start), CleaningSchedule.NEVER, StopPolicy.RESETS, 12);
        Forecast quarter = forecast(machine(0.7, 0, LocalDate.of(2026, 7, 1)), CleaningSchedule.NEVER,
                StopPolicy.RESETS, 3);

        assertThat(year.calls(Cause.RANDOM).mean()).isEqualTo(0.7, within(1e-12));
        assertThat(quarter.calls(Cause.RANDOM).mean()).isEqualTo(0.7 * 1.8 / 4, within(1e-12));
    }

    /**
     * Years walked through in steps of a fiftieth of a month, which knows nothing of the program: calls that clean, that do in part,
     * that do not; cleanings that leave dirt. Within four standard errors and what the steps cost.
     */
    @ParameterizedTest
    @CsvSource({"2026-01-01, 1, 3, 1, 12", "2026-05-01, 1, 0, 0.6, 24", "2026-09-01, 0.5, 8, 1, 12",
            "2026-03-01, 0, 2, 0.7, 12"})
    void dirt_yearsWalkedThrough_agree(LocalDate start, double cleans, double age, double restores, double months) {
        CleaningSchedule care = new CleaningSchedule(List.of(1.0, 5.0), 12, restores);
        Forecast forecast = forecast(machine(0, age, start), care, new StopPolicy(cleans), months);
        Random random = new Random(20261126);
        int draws = 40_000;
        double sum = 0;
        double squares = 0;
        int none = 0;
        for (int i = 0; i < draws; i++) {
            int stops = walked(start, age, restores, months, cleans, random);
            sum += stops;
            squares += (double) stops * stops;
            none += stops == 0 ? 1 : 0;
        }
        double mean = sum / draws;
        double error = Math.sqrt((squares / draws - mean * mean) / draws);

        assertThat(forecast.calls(Cause.WATER).mean()).isEqualTo(mean, within(4 * error + 0.002));
        double free = (double) none / draws;
        assertThat(forecast.calls(Cause.WATER).chance(0))
                .isEqualTo(free, within(4 * Math.sqrt(free * (1 - free) / draws) + 0.001));
        Forecast even = forecast(new MachineRisk(0, Optional.empty(), 0, CLOCK, age), care, new StopPolicy(cleans),
                months);
        assertThat(Math.abs(even.calls(Cause.WATER).mean() - mean)).isGreaterThan(4 * error + 0.002);
    }

    private static int walked(LocalDate start, double age, double restores, double months, double cleans,
            Random random) {
        int steps = 50;
        double clean = age;
        double left = -Math.log(1 - random.nextDouble());
        int stops = 0;
        for (int step = 0; step < months * steps; step++) {
            int month = step / steps;
            if (step % steps == 0 && (month % 12 == 1 || month % 12 == 5)) {
                clean *= 1 - restores;
            }
            double later = clean + QUARTERS.get((start.getMonthValue() - 1 + month) % 12 / 3) / steps;
            left -= Math.pow(later / 12, 2.5) - Math.pow(clean / 12, 2.5);
            clean = later;
            if (left < 0) {
                stops++;
                left = -Math.log(1 - random.nextDouble());
                clean = random.nextDouble() < cleans ? 0 : clean;
            }
        }
        return stops;
    }

    /** The same two cleanings a year: before the summer they are worth more than after it. */
    @Test
    void cleaning_beforeTheSeason_savesMoreThanAfterIt() {
        LocalDate start = LocalDate.of(2026, 1, 1);
        double before = forecast(machine(0, 9, start), new CleaningSchedule(List.of(5.5), 12, 1), StopPolicy.RESETS, 12)
                .calls().mean();
        double after = forecast(machine(0, 9, start), new CleaningSchedule(List.of(9.0), 12, 1), StopPolicy.RESETS, 12)
                .calls().mean();

        assertThat(before).isLessThan(after - 0.2);
    }
}

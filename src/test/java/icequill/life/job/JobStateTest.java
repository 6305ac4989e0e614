package icequill.life.job;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.life.job.JobEvent.Dropped;
import icequill.life.job.JobEvent.Finished;
import icequill.life.job.JobEvent.PartsOrdered;
import icequill.life.job.JobEvent.Readied;
import icequill.life.job.JobState.Accepted;
import icequill.life.job.JobState.Done;
import icequill.life.job.JobState.Ready;
import icequill.life.job.JobState.Waiting;
import icequill.life.job.JobState.Withdrawn;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class JobStateTest {

    private static final LocalDate MAY_18 = LocalDate.of(2026, 5, 18);
    private static final LocalDate MAY_20 = LocalDate.of(2026, 5, 20);
    private static final LocalDate MAY_27 = LocalDate.of(2026, 5, 27);
    private static final Accepted ACCEPTED = new Accepted(MAY_18);
    private static final Waiting WAITING = new Waiting(MAY_20, Optional.of("Fernhill Parts"), Optional.of(MAY_27));
    private static final Ready READY = new Ready(MAY_20);
    private static final Done DONE = new Done(MAY_27, "float-switch");
    private static final Withdrawn GONE = new Withdrawn(MAY_20, Optional.of("The bar closes."));
    private static final PartsOrdered ORDER = new PartsOrdered(MAY_20, Optional.of("Fernhill Parts"),
            Optional.of(MAY_27));
    private static final Dropped DROP = new Dropped(MAY_20, Optional.of("The bar closes."));

    /** A state, what happens, and where it stands then; or the sentence of why it cannot. */
    record Row(JobState from, JobEvent event, Object to) {}

    static Stream<Row> table() {
        return Stream.of(new Row(ACCEPTED, ORDER, WAITING),
                new Row(ACCEPTED, new Readied(MAY_20), READY),
                new Row(ACCEPTED, new Finished(MAY_27, "float-switch"), DONE),
                new Row(ACCEPTED, DROP, GONE),
                new Row(WAITING, ORDER, WAITING),
                new Row(WAITING, new Readied(MAY_27), new Ready(MAY_27)),
                new Row(WAITING, new Finished(MAY_27, "float-switch"), DONE),
                new Row(WAITING, DROP, GONE),
                new Row(READY, ORDER, WAITING),
                new Row(READY, new Finished(MAY_27, "float-switch"), DONE),
                new Row(READY, DROP, GONE),
                new Row(READY, new Readied(MAY_27), "everything is there since 2026-05-20 already"),
                new Row(ACCEPTED, new PartsOrdered(MAY_20, Optional.empty(), Optional.of(MAY_18)),
                        "expected: parts are to come before they are ordered (2026-05-20 or a later day)"),
                new Row(WAITING, new Readied(MAY_18),
                        "day: 2026-05-18 is before 2026-05-20, the day of the step before it (that day or a later one)"),
                new Row(DONE, DROP, "the job was done on 2026-05-27 (a job that is still open)"),
                new Row(DONE, ORDER, "the job was done on 2026-05-27 (a job that is still open)"),
                new Row(GONE, new Finished(MAY_27, "float-switch"),
                        "the job was withdrawn on 2026-05-20 (a job that is still open)"));
    }

    @ParameterizedTest
    @MethodSource("table")
    void eachStep_leadsWhereTheTableSays(Row row) {
        Validated<JobState> after = JobState.step(row.from(), row.event());

        assertThat(after.found().<Object>map(state -> state)
                .orElseGet(() -> after.problems().stream().map(Problem::text).findFirst().orElseThrow()))
                .isEqualTo(row.to());
    }

    @ParameterizedTest
    @CsvSource({"2026-05-27, false", "2026-05-28, true"})
    void partsAreLate_theDayAfterTheyWereExpected(LocalDate day, boolean isLate) {
        assertThat(WAITING.isLate(day)).isEqualTo(isLate);
        assertThat(new Waiting(MAY_20, Optional.empty(), Optional.empty()).isLate(day)).isFalse();
    }
}

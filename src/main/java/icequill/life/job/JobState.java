package icequill.life.job;

import icequill.life.job.JobEvent.Dropped;
import icequill.life.job.JobEvent.Finished;
import icequill.life.job.JobEvent.PartsOrdered;
import icequill.life.job.JobEvent.Readied;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.Optional;

/** Where a job stands. */
public sealed interface JobState {

    /** The day of the last step. */
    LocalDate since();

    /** Accepted; nothing was done about it yet. */
    record Accepted(LocalDate since) implements JobState {}

    /**
     * Waits for parts.
     *
     * @param supplier of the last order
     * @param expected on which day; empty where nobody said
     */
    record Waiting(LocalDate since, Optional<String> supplier, Optional<LocalDate> expected) implements JobState {

        /** Whether what is to have come by now has not. */
        public boolean isLate(LocalDate day) {
            return expected.filter(day::isAfter).isPresent();
        }
    }

    /** Can be planned. */
    record Ready(LocalDate since) implements JobState {}

    /**
     * By a visit.
     *
     * @param visit by id
     */
    record Done(LocalDate since, String visit) implements JobState {}

    /**
     * It will not be done.
     *
     * @param reason empty only where the customer was forgotten since
     */
    record Withdrawn(LocalDate since, Optional<String> reason) implements JobState {}

    /** Where it stands after something happened, or why that cannot be. */
    static Validated<JobState> step(JobState state, JobEvent event) {
        return switch (state) {
        case Done done -> over("was done on " + done.since());
        case Withdrawn gone -> over("was withdrawn on " + gone.since());
        case Accepted open -> next(open, event);
        case Waiting open -> next(open, event);
        case Ready open -> next(open, event);
        };
    }

    private static Validated<JobState> next(JobState open, JobEvent event) {
        if (event.day().isBefore(open.since())) {
            return Validated.invalid(new Problem(Code.WRONG_ORDER, at("day"),
                    event.day() + " is before " + open.since() + ", the day of the step before it",
                    "that day or a later one"));
        }
        return switch (event) {
        case PartsOrdered(LocalDate day, Optional<String> supplier, Optional<LocalDate> expected) ->
            expected.filter(day::isAfter).isPresent()
                    ? Validated.invalid(new Problem(Code.WRONG_ORDER, at("expected"),
                            "parts are to come before they are ordered", day + " or a later day"))
                    : Validated.valid(new Waiting(day, supplier, expected));
        case Readied(LocalDate day) -> open instanceof Ready
                ? Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "everything is there since " + open.since() + " already", ""))
                : Validated.valid(new Ready(day));
        case Finished(LocalDate day, String visit) -> Validated.valid(new Done(day, visit));
        case Dropped(LocalDate day, Optional<String> reason) -> Validated.valid(new Withdrawn(day, reason));
        };
    }

    private static Validated<JobState> over(String how) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "the job " + how,
                "a job that is still open"));
    }

    private static Place at(String field) {
        return new Place("", 0, field);
    }
}

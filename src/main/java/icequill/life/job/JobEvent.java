package icequill.life.job;

import java.time.LocalDate;
import java.util.Optional;

/** What happens to a job. */
public sealed interface JobEvent {

    LocalDate day();

    /**
     * Parts are ordered.
     *
     * @param supplier in words
     * @param expected the day on which they are to come; empty where nobody said
     */
    record PartsOrdered(LocalDate day, Optional<String> supplier, Optional<LocalDate> expected) implements JobEvent {}

    /** Everything that is needed is there. */
    record Readied(LocalDate day) implements JobEvent {}

    /**
     * The work is done.
     *
     * @param visit by id, on which it was done
     */
    record Finished(LocalDate day, String visit) implements JobEvent {}

    /**
     * It will not be done after all.
     *
     * @param reason empty only where the customer was forgotten since
     */
    record Dropped(LocalDate day, Optional<String> reason) implements JobEvent {}
}

package icequill.ledger.entries;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Which visits are wanted; whatever is empty leaves no visit out.
 *
 * @param sites by id
 * @param from the first day on which one began, where it was
 * @param until the last day
 */
public record VisitQuestion(List<String> sites, Optional<LocalDate> from, Optional<LocalDate> until) {

    /** All of the book. */
    public static final VisitQuestion ALL = new VisitQuestion(List.of(), Optional.empty(), Optional.empty());

    public VisitQuestion {
        sites = List.copyOf(sites);
    }
}

package icequill.answer.history;

import java.util.List;

/**
 * Visits, the newest first.
 *
 * @param hasMore whether there are older ones that fit
 */
public record VisitListing(List<VisitRow> visits, boolean hasMore) {

    public VisitListing {
        visits = List.copyOf(visits);
    }
}

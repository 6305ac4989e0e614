package icequill.request;

import icequill.problem.Place;
import icequill.work.ChargeClass;
import icequill.work.Visit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The calls of a site, as far as they are known.
 *
 * @param lastYear how many there were in the last twelve months; empty when nobody counted
 * @param minutes that a typical one takes, from 1
 * @param on what its time is charged as
 * @param parts that it takes
 */
public record CallHistory(Optional<Integer> lastYear, int minutes, ChargeClass on, List<Part> parts, Place place) {

    /** A material, by its id, and how much of it. */
    public record Part(Visit.Named material, BigDecimal amount) {}

    public CallHistory {
        parts = List.copyOf(parts);
    }
}

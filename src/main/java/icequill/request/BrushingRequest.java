package icequill.request;

import icequill.problem.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a customer says of brushing his own condensers.
 *
 * @param minutes that one brushing takes his people
 * @param wage of one hour of theirs
 * @param brush price of one
 * @param bought brushings that he paid for in the last twelve months
 * @param lastBrushed when the condensers were last brushed; empty when nobody knows
 * @param reachable machines whose condenser somebody has seen to be within reach, without a panel to take off
 */
public record BrushingRequest(String site, int minutes, MonetaryAmount wage, MonetaryAmount brush, int bought,
        Optional<LocalDate> lastBrushed, List<Named> reachable, Place place) {

    /** A machine by its id, and where it was written. */
    public record Named(String machine, Place place) {}

    public BrushingRequest {
        reachable = List.copyOf(reachable);
    }
}

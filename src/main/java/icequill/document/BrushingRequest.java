package icequill.document;

import icequill.problem.Place;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * What a customer says of brushing his own condensers.
 *
 * @param minutes that one brushing takes his people
 * @param wage of one hour of theirs
 * @param brush price of one
 * @param reachable machines whose condenser somebody has seen to be within reach, without a panel to take off
 */
public record BrushingRequest(String site, int minutes, MonetaryAmount wage, MonetaryAmount brush,
        List<Named> reachable, Place place) {

    /** A machine by its id, and where it was written. */
    public record Named(String machine, Place place) {}

    public BrushingRequest {
        reachable = List.copyOf(reachable);
    }
}

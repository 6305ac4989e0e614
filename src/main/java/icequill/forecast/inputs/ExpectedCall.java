package icequill.forecast.inputs;

import icequill.party.Wording;
import icequill.problem.Place;
import icequill.work.ChargeClass;
import java.math.BigDecimal;
import java.util.List;

/**
 * A kind of call.
 *
 * @param share of the calls of its cause, from 0 to 1
 * @param band of labor, by id
 * @param minutes at the site, without the work that sets dirt back
 * @param on what its time is charged as
 */
public record ExpectedCall(String id, Wording name, BigDecimal share, String band, int minutes, ChargeClass on,
        List<Part> parts, Place place) {

    /** A material, by id, and how much of it. */
    public record Part(String material, BigDecimal amount, Place place) {}

    public ExpectedCall {
        parts = List.copyOf(parts);
    }

    ExpectedCall withShare(BigDecimal other) {
        return new ExpectedCall(id, name, other, band, minutes, on, parts, place);
    }
}

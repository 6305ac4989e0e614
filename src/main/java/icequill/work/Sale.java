package icequill.work;

import icequill.problem.Place;
import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * What was sold without anybody coming.
 *
 * @param at the beginning of the day on which it was sent or handed over
 * @param shipping what sending it costs the customer
 */
public record Sale(ZonedDateTime at, Way way, Optional<Shipping> shipping) {

    /** How it came to the customer; taxes go by where that was. */
    public enum Way {
        SHIPPED, FETCHED
    }

    /**
     * A charge for sending things.
     *
     * @param on the class it is charged under; empty for that of the things, if they are of one
     */
    public record Shipping(OwnPrice price, Optional<ChargeClass> on, Place place) {}
}

package icequill.work;

import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * Why the visit took place, if the customer asked for it.
 *
 * @param id by which the book knows the call; empty where none was taken
 * @param promised by when a technician was promised
 */
public record Call(Optional<String> id, String askedBy, ZonedDateTime at, String symptom,
        Optional<ZonedDateTime> promised) {}

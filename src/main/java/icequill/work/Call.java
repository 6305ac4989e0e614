package icequill.work;

import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * Why the visit took place, if the customer asked for it.
 *
 * @param promised by when a technician was promised
 */
public record Call(String askedBy, ZonedDateTime at, String symptom, Optional<ZonedDateTime> promised) {}

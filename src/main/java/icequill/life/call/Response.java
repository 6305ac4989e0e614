package icequill.life.call;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * How soon somebody came.
 *
 * @param promised by when somebody was to be there, that moment included; empty where nothing was promised
 * @param arrived when the first person did; empty while nobody did
 */
public record Response(ZonedDateTime called, Optional<ZonedDateTime> promised, Optional<ZonedDateTime> arrived) {

    /** Whether a promise is kept. */
    public enum Kept {
        KEPT,
        /** Also while nobody came, and the time is over. */
        MISSED,
        /** Nobody came, and there is still time. */
        WAITING, NOT_PROMISED
    }

    /** From the call to the arrival, in real time; nothing for who was there already. Empty while nobody came. */
    public Optional<Duration> took() {
        return arrived.map(there -> Duration.between(called, there)).map(time -> time.isNegative()
                ? Duration.ZERO
                : time);
    }

    /** How it stands at a moment. */
    public Kept at(ZonedDateTime now) {
        return promised.map(by -> arrived.orElse(now).isAfter(by)
                ? Kept.MISSED
                : arrived.isPresent() ? Kept.KEPT : Kept.WAITING).orElse(Kept.NOT_PROMISED);
    }
}

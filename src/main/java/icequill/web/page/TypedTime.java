package icequill.web.page;

import java.time.LocalTime;

/**
 * A time of day that was typed.
 *
 * @param offset from UTC, such as -04:00, where clocks repeat the hour; no letters elsewhere
 */
public record TypedTime(LocalTime time, String offset) {

    /** As forms have it behind their day. */
    public String text() {
        return time + offset;
    }
}

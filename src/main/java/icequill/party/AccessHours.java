package icequill.party;

import java.time.Duration;
import java.time.LocalTime;

/** The hours of a working day within which a technician is let in, in the shop's time zone. Midnight as the end is that of the day. */
public record AccessHours(LocalTime from, LocalTime until) {

    private static final int DAY = 24 * 60;

    /** Minutes from the first to a time, on the same day or the next. */
    public int after(LocalTime time) {
        return Math.floorMod((int) Duration.between(from, time).toMinutes(), DAY);
    }

    /** From the first to the last minute. */
    public int length() {
        int minutes = after(until);
        return minutes > 0 ? minutes : DAY;
    }

    /** Minutes that are left for somebody who comes at a time; none, or fewer, for one who is not let in then. */
    public int left(LocalTime arrival) {
        return length() - after(arrival);
    }

    /** Whether somebody who comes at a time is let in; the hours may run past midnight. */
    public boolean contains(LocalTime time) {
        boolean begun = !time.isBefore(from);
        boolean open = time.isBefore(until);
        return from.isBefore(until) ? begun && open : begun || open;
    }
}

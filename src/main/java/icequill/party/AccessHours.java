package icequill.party;

import java.time.LocalTime;

/** The hours of a working day within which a technician is let in, in the shop's time zone. Midnight as the end is that of the day. */
public record AccessHours(LocalTime from, LocalTime until) {

    /** Whether somebody who comes at a time is let in; the hours may run past midnight. */
    public boolean contains(LocalTime time) {
        boolean begun = !time.isBefore(from);
        boolean open = time.isBefore(until);
        return from.isBefore(until) ? begun && open : begun || open;
    }
}

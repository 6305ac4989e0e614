package icequill.party;

import java.time.LocalTime;

/** The hours of a working day within which a technician is let in, in the shop's time zone. */
public record AccessHours(LocalTime from, LocalTime until) {}

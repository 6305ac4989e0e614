package icequill.office.asking;

import java.time.Instant;

/**
 * Who changed something last, and when.
 *
 * @param who by the name of the system's user; no letters where it is not known
 */
public record LastChange(String who, Instant at) {}

package icequill.ledger.papers;

import java.time.Instant;

/**
 * That a version of the rates came into force.
 *
 * @param number from 1, in the order of time
 * @param version by its id
 * @param who and {@code office}: by whom
 */
public record Adoption(long number, String version, Instant at, String who, String office) {}

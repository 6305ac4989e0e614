package icequill.ledger.trail;

import java.time.Instant;
import java.util.Optional;

/**
 * Which rows of the trail are wanted.
 *
 * @param entry what it is called; of a site, its machines too
 * @param from the first moment
 * @param until just before this moment
 * @param most how many at most, from 1
 */
public record TrailQuestion(Optional<String> entry, Optional<Instant> from, Optional<Instant> until,
        Optional<String> who, int most) {}

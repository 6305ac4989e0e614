package icequill.ledger.papers;

import java.time.Instant;
import org.jdbi.v3.core.mapper.reflect.ColumnName;

/**
 * That a version of the rates came into force.
 *
 * @param number from 1, in the order of time
 * @param version by its id
 * @param who and {@code office}: by whom
 */
public record Adoption(long number, @ColumnName("version_id") String version, @ColumnName("adopted_at") Instant at,
        String who, String office) {}

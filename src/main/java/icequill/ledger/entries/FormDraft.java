package icequill.ledger.entries;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.mapper.reflect.ColumnName;

/**
 * What somebody began to type into the form of a page.
 *
 * @param form what is typed, such as visit
 * @param site of which it tells; empty for one that the book does not have yet
 * @param subject what it changes, by id; no letters for something new
 * @param content what stands in its fields, as the caller writes it; nothing of it once it ended
 * @param ended empty while it can be gone on with
 * @param answer the address of what it became, where it was sent
 */
public record FormDraft(String id, String form, @ColumnName("site_id") Optional<String> site, String subject,
        String content, Instant beganAt, Instant keptAt, Optional<Ending> ended, Optional<String> answer) {

    /** How one ends. */
    public enum Ending {
        SENT, DISCARDED,
        /** With its customer. */
        FORGOTTEN
    }
}

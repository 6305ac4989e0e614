package icequill.ledger.entries;

import java.time.Instant;
import org.jdbi.v3.core.mapper.reflect.ColumnName;

/**
 * What somebody began to type into the form of a page.
 *
 * @param form what is typed, such as visit
 * @param site of which it tells
 * @param subject what it changes, by id; no letters for something new
 * @param content what stands in its fields, as the caller writes it
 */
public record FormDraft(String id, String form, @ColumnName("site_id") String site, String subject, String content,
        Instant beganAt, Instant keptAt) {}

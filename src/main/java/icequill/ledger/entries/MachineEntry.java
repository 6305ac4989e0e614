package icequill.ledger.entries;

import java.time.LocalDate;
import java.util.Optional;
import org.jdbi.v3.core.mapper.reflect.ColumnName;

/**
 * A machine in the book.
 *
 * @param id within its site
 * @param position in the order of its site's machines
 * @param data all that is known of it, as the caller writes it
 */
public record MachineEntry(@ColumnName("site_id") String site, String id, String model, Optional<String> serial,
        @ColumnName("installed_on") Optional<LocalDate> installed, int position, String data) {}

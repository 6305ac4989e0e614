package icequill.office.register;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A customer, site or machine that is to be added or changed.
 *
 * @param isNew whether the book must not know it yet; otherwise it must
 * @param flags values by the names of their flags; one of no letters is taken out
 * @param file that has the values instead
 */
public record EntryChange(String id, boolean isNew, Map<String, String> flags, Optional<Path> file) {
    public EntryChange {
        flags = new LinkedHashMap<>(flags);
    }
}

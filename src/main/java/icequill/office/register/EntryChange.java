package icequill.office.register;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A customer, site or machine that is to be added or changed.
 *
 * @param isNew whether the book must not know it yet; otherwise it must
 * @param flags values by the names of their flags; one of no letters is taken out
 */
public record EntryChange(String id, boolean isNew, Map<String, String> flags) {
    public EntryChange {
        flags = new LinkedHashMap<>(flags);
    }
}

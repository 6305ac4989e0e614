package icequill.office.register;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What somebody began to type into the form of a page.
 *
 * @param form what is typed, such as visit
 * @param site of which it tells; empty for one that the book does not have yet
 * @param subject what it changes, by id; no letters for something new
 * @param fields what stands in its fields, by their names
 */
public record KeptDraft(String id, String form, Optional<String> site, String subject, Instant began, Instant kept,
        Map<String, List<String>> fields) {

    public KeptDraft {
        fields = Map.copyOf(fields);
    }
}

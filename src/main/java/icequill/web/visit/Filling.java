package icequill.web.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Fills the fields of a visit's page with what its form says. */
final class Filling {

    private final Map<String, List<String>> fields = new LinkedHashMap<>();

    void put(String field, String value) {
        fields.put(field, List.of(value));
    }

    void put(String field, Optional<String> value) {
        value.ifPresent(text -> put(field, text));
    }

    /** Ticks one box more of those that have a name. */
    void tick(String field, String value) {
        List<String> ticked = new ArrayList<>(fields.getOrDefault(field, List.of()));
        ticked.add(value);
        fields.put(field, ticked);
    }

    Map<String, List<String>> fields() {
        return fields;
    }
}

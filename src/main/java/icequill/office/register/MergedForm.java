package icequill.office.register;

import icequill.answer.MergeResult.Difference;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The values of two forms made into those of one, that of the survivor.
 *
 * @param taken keys, those within others with dots, whose values, or some of them, come from the other
 * @param differs what else the other has, of which the survivor's holds
 */
record MergedForm(Map<String, Object> values, List<String> taken, List<Difference> differs) {

    private static final String NOTES = "notes";

    /** What is taken over where the survivor lacks it, and lists to which the other's rows are added. */
    record Rules(Set<String> whereMissing, Set<String> lists) {

        private boolean takes(String name) {
            return whereMissing.contains(name) || lists.contains(name) || name.equals(NOTES);
        }
    }

    static MergedForm of(Map<String, Object> from, Map<String, Object> into, Rules rules) {
        MergedForm merged = new MergedForm(new LinkedHashMap<>(into), new ArrayList<>(), new ArrayList<>());
        merged.add(merged.values(), "", from, rules);
        return merged;
    }

    private void add(Map<String, Object> to, String path, Map<?, ?> from, Rules rules) {
        from.forEach((key, value) -> add(to, path, String.valueOf(key), value, rules));
    }

    private void add(Map<String, Object> to, String path, String key, Object value, Rules rules) {
        String name = path + key;
        Object own = to.get(key);
        if (value.equals(own)) {
            return;
        }
        if (value instanceof Map<?, ?> inner && rules.lists().stream().anyMatch(list -> list.startsWith(name + "."))) {
            Map<String, Object> changed = new LinkedHashMap<>();
            if (own instanceof Map<?, ?> before) {
                before.forEach((known, there) -> changed.put(String.valueOf(known), there));
            }
            add(changed, name + ".", inner, rules);
            if (!changed.isEmpty()) {
                to.put(key, changed);
            }
        } else if (own == null && rules.takes(name)) {
            to.put(key, value);
            taken.add(name);
        } else if (own != null && key.equals(NOTES)) {
            to.put(key, own + "\n" + value);
            taken.add(name);
        } else if (rules.lists().contains(name) && value instanceof List<?> rows && own instanceof List<?> before) {
            List<?> all = Stream.concat(before.stream(), rows.stream()).distinct().toList();
            to.put(key, all);
            taken.add(name);
        } else {
            differs.add(new Difference(name, words(value), own == null ? "" : words(own)));
        }
    }

    private static String words(Object value) {
        return switch (value) {
        case Map<?, ?> inner -> String.join(", ", inner.values().stream().map(MergedForm::words).toList());
        case List<?> rows -> String.join("; ", rows.stream().map(MergedForm::words).toList());
        default -> String.valueOf(value);
        };
    }
}

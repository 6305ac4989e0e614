package icequill.web.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a visit's form says beyond the fields of its page. It goes along with its row, which is known again by what it is called.
 *
 * @param before a part of the form as the book has it
 */
record Kept(Told before) {

    /** All but what fields of the page say. */
    Map<String, Object> but(Set<String> shown) {
        Map<String, Object> kept = new LinkedHashMap<>();
        before.values().forEach((key, value) -> {
            if (!shown.contains(String.valueOf(key))) {
                kept.put(String.valueOf(key), value);
            }
        });
        return kept;
    }

    /** Rows of a list, each to be taken along once. */
    Rows rows(String list) {
        return new Rows(new ArrayList<>(before.rows(list)));
    }

    /** Rows that none of the page's was taken for yet. */
    record Rows(List<Told> left) {

        /** The next row that has a value under a key; nothing where there is none. */
        Kept next(String key, String value) {
            for (Told row : left) {
                if (row.text(key).filter(value::equals).isPresent()) {
                    left.remove(row);
                    return new Kept(row);
                }
            }
            return new Kept(Told.NOTHING);
        }
    }
}

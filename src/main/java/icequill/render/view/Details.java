package icequill.render.view;

import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Named details of a paper, in the order in which they are printed. */
final class Details {

    private final Sentences sentences;
    private final List<Map<String, String>> rows = new ArrayList<>();

    Details(Sentences sentences) {
        this.sentences = sentences;
    }

    /** @param key of the words for the name */
    Details add(String key, String value) {
        rows.add(pair(sentences.word(key), value));
        return this;
    }

    Details add(String key, Optional<String> value) {
        value.ifPresent(text -> add(key, text));
        return this;
    }

    List<Map<String, String>> rows() {
        return List.copyOf(rows);
    }

    static Map<String, String> pair(String name, String value) {
        return Map.of("name", name, "value", value);
    }
}

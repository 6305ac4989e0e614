package icequill.render.view;

import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Named details of a paper, in the order in which they are printed. */
final class Details {

    private final Sentences sentences;
    private final List<Row> rows = new ArrayList<>();

    record Row(String name, String value) implements Texts {}

    Details(Sentences sentences) {
        this.sentences = sentences;
    }

    /** @param key of the words for the name */
    Details add(String key, String value) {
        rows.add(new Row(sentences.word(key), value));
        return this;
    }

    Details add(String key, Optional<String> value) {
        value.ifPresent(text -> add(key, text));
        return this;
    }

    List<Row> rows() {
        return List.copyOf(rows);
    }
}

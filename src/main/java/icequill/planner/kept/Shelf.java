package icequill.planner.kept;

import java.util.Optional;

/** Where texts are kept by what they answer. It may lose any of them, but gives none but the one that was put. */
public interface Shelf {

    /**
     * A text that is kept; empty where none is, or it cannot be read.
     *
     * @param asked all that the text depends on
     */
    Optional<String> text(String asked);

    /** Keeps a text, or does not. */
    void put(String asked, String text);
}

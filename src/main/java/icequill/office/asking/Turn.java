package icequill.office.asking;

import java.util.function.Function;

/** Where a dialogue stands. */
public sealed interface Turn {

    /** Somebody is asked. */
    record Ask(Question question, Function<String, Turn> reader) implements Turn {

        /** Where an answer leads to. */
        public Turn answer(String text) {
            return reader.apply(text.strip());
        }
    }

    /**
     * An answer that will not do; the same is asked again.
     *
     * @param text what is wrong with it, and what would be right
     */
    record Wrong(String text) implements Turn {}

    /** All was asked that a visit's form holds. */
    record Told(Draft visit) implements Turn {}

    /** It goes into the book. */
    record Store(Draft visit) implements Turn {}

    /** It goes into a file. */
    record Write(Draft visit, String file) implements Turn {}

    /** One question back. */
    record Back() implements Turn {}

    /** Nothing is kept. */
    record Leave() implements Turn {}
}

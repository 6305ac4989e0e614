package icequill.files.answer;

import java.util.function.Consumer;

/** The entries of a list so long that no more than one of them is to be in memory. */
@FunctionalInterface
public interface OneByOne<T> {

    /** Gives each of them, in their order. */
    void each(Consumer<? super T> taker);
}

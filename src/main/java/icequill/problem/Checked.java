package icequill.problem;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value, or everything that is wrong with the input it was to be made from.
 *
 * @param <T> the value's type
 */
public sealed interface Checked<T> {

    /** The value; the input was right. */
    record Sound<T>(T value) implements Checked<T> {}

    /** What is wrong; never empty. */
    record Faulty<T>(List<Problem> problems) implements Checked<T> {
        public Faulty {
            problems = List.copyOf(problems);
            Check.that(!problems.isEmpty(), "a faulty result needs a problem");
        }
    }

    static <T> Checked<T> sound(T value) {
        return new Sound<>(value);
    }

    static <T> Checked<T> faulty(Problem problem) {
        return new Faulty<>(List.of(problem));
    }

    /** Empty when sound. */
    default List<Problem> problems() {
        return switch (this) {
        case Sound<T> sound -> List.of();
        case Faulty<T> faulty -> faulty.problems();
        };
    }

    /** The value; empty where something is wrong, whatever it is. */
    default Optional<T> found() {
        return this instanceof Sound<T>(T value) ? Optional.of(value) : Optional.empty();
    }

    /** Goes on with the value, or keeps the problems. */
    default <R> Checked<R> then(Function<? super T, Checked<R>> next) {
        return switch (this) {
        case Sound<T> sound -> next.apply(sound.value());
        case Faulty<T> faulty -> new Faulty<>(faulty.problems());
        };
    }

    default <R> Checked<R> map(Function<? super T, ? extends R> change) {
        return then(value -> new Sound<R>(change.apply(value)));
    }

    /**
     * The value, where faults were ruled out before.
     *
     * @throws IllegalStateException naming the problems, otherwise
     */
    default T orElseThrow() {
        return switch (this) {
        case Sound<T> sound -> sound.value();
        case Faulty<T> faulty -> throw new IllegalStateException(faulty.problems().toString());
        };
    }
}

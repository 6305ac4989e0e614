package icequill.problem;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value, or everything that is wrong with the input it was to be made from.
 *
 * @param <T> the value's type
 */
public sealed interface Validated<T> {

    /** The value; the input was right. */
    record Valid<T>(T value) implements Validated<T> {}

    /** What is wrong; never empty. */
    record Invalid<T>(List<Problem> problems) implements Validated<T> {
        public Invalid {
            problems = List.copyOf(problems);
            Check.that(!problems.isEmpty(), "an invalid result needs a problem");
        }
    }

    static <T> Validated<T> valid(T value) {
        return new Valid<>(value);
    }

    static <T> Validated<T> invalid(Problem problem) {
        return new Invalid<>(List.of(problem));
    }

    /** Empty when valid. */
    default List<Problem> problems() {
        return switch (this) {
        case Valid<T> valid -> List.of();
        case Invalid<T> invalid -> invalid.problems();
        };
    }

    /** The value; empty where something is wrong, whatever it is. */
    default Optional<T> found() {
        return this instanceof Valid<T>(T value) ? Optional.of(value) : Optional.empty();
    }

    /** Goes on with the value, or keeps the problems. */
    default <R> Validated<R> then(Function<? super T, Validated<R>> next) {
        return switch (this) {
        case Valid<T> valid -> next.apply(valid.value());
        case Invalid<T> invalid -> new Invalid<>(invalid.problems());
        };
    }

    default <R> Validated<R> map(Function<? super T, ? extends R> change) {
        return then(value -> new Valid<R>(change.apply(value)));
    }

    /**
     * The value, where faults were ruled out before.
     *
     * @throws IllegalStateException naming the problems, otherwise
     */
    default T orElseThrow() {
        return switch (this) {
        case Valid<T> valid -> valid.value();
        case Invalid<T> invalid -> throw new IllegalStateException(invalid.problems().toString());
        };
    }
}

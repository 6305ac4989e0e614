package icequill.problem;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Collects the problems of one run, so that all are reported at once. For one thread. */
public final class Problems {

    /** Nobody reads more of them, and a file may hold any number. */
    private static final int MOST = 1_000;

    private static final Problem MORE = new Problem(Code.TOO_LARGE, Place.NOWHERE,
            "more problems than " + MOST + " were found; the rest is not listed", "mend these first");

    private final Set<Problem> found = new LinkedHashSet<>();
    private boolean isCut;
    private int count;

    public void add(Problem problem) {
        count++;
        if (found.size() < MOST) {
            found.add(problem);
        } else {
            isCut |= !found.contains(problem);
        }
    }

    public void add(Code code, Place place, String message, String allowed) {
        add(new Problem(code, place, message, allowed));
    }

    public void addAll(Collection<Problem> problems) {
        problems.forEach(this::add);
    }

    /** The value of a valid result; of an invalid one, the problems are collected here. */
    public <T> Optional<T> take(Validated<T> checked) {
        return switch (checked) {
        case Validated.Valid<T> valid -> Optional.of(valid.value());
        case Validated.Invalid<T> invalid -> {
            addAll(invalid.problems());
            yield Optional.empty();
        }
        };
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** How often one was added, listed or not. */
    public int count() {
        return count;
    }

    /** In the order found, each once; the last says so when there were more than anybody would read. */
    public List<Problem> list() {
        return isCut ? Stream.concat(found.stream(), Stream.of(MORE)).distinct().toList() : List.copyOf(found);
    }

    /** The value when nothing was found, otherwise the problems. */
    public <T> Validated<T> or(Supplier<T> value) {
        return found.isEmpty() ? Validated.valid(value.get()) : new Validated.Invalid<>(list());
    }
}

package icequill.problem;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Collects the problems of one run, so that all are reported at once. For one thread. */
public final class Problems {

    private final List<Problem> found = new ArrayList<>();

    public void add(Problem problem) {
        found.add(problem);
    }

    public void add(Code code, Place place, String message, String allowed) {
        found.add(new Problem(code, place, message, allowed));
    }

    public void addAll(Collection<Problem> problems) {
        found.addAll(problems);
    }

    /** The value of a sound result; of a faulty one, the problems are collected here. */
    public <T> Optional<T> take(Checked<T> checked) {
        return switch (checked) {
        case Checked.Sound<T> sound -> Optional.of(sound.value());
        case Checked.Faulty<T> faulty -> {
            found.addAll(faulty.problems());
            yield Optional.empty();
        }
        };
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** In the order found, each once. */
    public List<Problem> list() {
        return found.stream().distinct().toList();
    }

    /** The value when nothing was found, otherwise the problems. */
    public <T> Checked<T> or(Supplier<T> value) {
        return found.isEmpty() ? Checked.sound(value.get()) : new Checked.Faulty<>(list());
    }
}

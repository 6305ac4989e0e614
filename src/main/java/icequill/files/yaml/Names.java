package icequill.files.yaml;

import icequill.problem.Code;
import icequill.problem.Problem;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;

/** Lists of things that have ids, each of which may stand only once. */
public final class Names {

    private Names() {
    }

    static void duplicate(Fields entry, String id) {
        entry.problems().add(Code.DUPLICATE_NAME, entry.place("id"), "\"" + id + "\" is used a second time",
                "a name of its own for each");
    }

    /** Reports a name that refers to nothing, unless nothing of its kind could be read. */
    public static void refer(Fields entry, String key, String kind, Set<String> known) {
        entry.id(key).filter(id -> !known.isEmpty() && !known.contains(id))
                .ifPresent(id -> entry.problems().add(Problem.unknownName(entry.place(key), kind, id, known)));
    }

    /** The entries of a list with each its id, made by the maker; what has no id is left out, it was reported. */
    public static <T> List<T> list(List<Fields> entries, BiFunction<String, Fields, Optional<T>> maker) {
        Set<String> ids = new HashSet<>();
        return entries.stream().flatMap(entry -> entry.text("id").stream().flatMap(id -> {
            if (!ids.add(id)) {
                duplicate(entry, id);
            }
            return maker.apply(id, entry).stream();
        })).toList();
    }
}

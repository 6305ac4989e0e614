package icequill.web.page;

import icequill.problem.Place;
import icequill.problem.Problem;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** In which field of a page each place of a form was typed, such as {@code people[0].arrived}. */
public final class FieldPlaces {

    private final Map<String, String> fields = new LinkedHashMap<>();

    public void put(String path, String field) {
        fields.put(path, field);
    }

    /**
     * The field that a problem is about: that of a key which is missing where the problem lies, that of its place, one that the place
     * belongs to, or the first that belongs to it.
     */
    public Optional<String> field(Problem problem) {
        String path = problem.place().path();
        String within = path.isEmpty() ? "" : path + ".";
        Optional<String> missing = longest(key -> key.startsWith(within)
                && problem.message().contains("\"" + key.substring(within.length()) + "\""));
        return path.isEmpty()
                ? missing
                : missing.or(() -> longest(path::startsWith)).or(() -> longest(key -> key.startsWith(path)));
    }

    private Optional<String> longest(Predicate<String> fits) {
        return fields.entrySet().stream().filter(entry -> fits.test(entry.getKey()))
                .max(Comparator.comparingInt(entry -> entry.getKey().length())).map(Map.Entry::getValue);
    }

    /** The same problem at a field of the page. */
    public static Problem at(String field, Problem problem) {
        return new Problem(problem.code(), new Place("", 0, field), problem.message(), problem.allowed());
    }
}

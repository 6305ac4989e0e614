package icequill.web.page;

import icequill.problem.Problem;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What stands in the fields of a form that is shown again, and what is wrong with it.
 *
 * @param fields what was typed, by the names of fields
 * @param problems whose place is the name of a field, where it is known
 */
public record TypedFields(Map<String, List<String>> fields, List<Problem> problems) {

    /** Of a form that nobody has typed in yet. */
    public static final TypedFields NONE = new TypedFields(Map.of(), List.of());

    public TypedFields {
        fields = Map.copyOf(fields);
        problems = List.copyOf(problems);
    }

    /** What stands in a field; no letters for nothing. */
    public String value(String field) {
        return fields.getOrDefault(field, List.of()).stream().findFirst().orElse("");
    }

    /** Whether a box is ticked. */
    public boolean has(String field, String value) {
        return fields.getOrDefault(field, List.of()).contains(value);
    }

    /**
     * How many rows of fields something stands in, blank ones between them too.
     *
     * @param before what the names of its fields begin with, before the number of the row
     * @param after what each of them ends with
     */
    public int rows(String before, String... after) {
        Pattern field = Pattern.compile(Pattern.quote(before) + "(\\d{1,4})"
                + Arrays.stream(after).map(Pattern::quote).collect(Collectors.joining("|", "(?:", ")")));
        return fields.entrySet().stream().filter(entry -> !entry.getValue().isEmpty())
                .map(entry -> field.matcher(entry.getKey())).filter(Matcher::matches)
                .mapToInt(row -> Integer.parseInt(row.group(1)) + 1).max().orElse(0);
    }

    /** What is wrong with a field. */
    public List<Problem> at(String field) {
        return problems.stream().filter(problem -> problem.place().path().equals(field)).toList();
    }
}

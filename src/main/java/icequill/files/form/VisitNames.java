package icequill.files.form;

import icequill.files.yaml.Json;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The names that a visit's stored form has, read without holding it against its schema: lists go through all visits of a book.
 *
 * @param call that it answers, by id
 * @param caller who asked for it
 * @param machines by id, that something was done at or put into
 * @param tasks by id, that were done or are to be done
 * @param grades of the people, by name, as far as they are told
 */
public record VisitNames(Optional<String> call, Optional<String> caller, List<String> people, List<String> machines,
        List<String> tasks, Map<String, String> grades) {

    public VisitNames {
        people = List.copyOf(people);
        machines = List.copyOf(machines);
        tasks = List.copyOf(tasks);
        grades = Map.copyOf(grades);
    }

    /**
     * The names of one visit.
     *
     * @param data as the book has it; blank once it was forgotten
     */
    public static VisitNames of(String data) {
        Map<String, Object> form = Json.map(data);
        Map<?, ?> asked = form.get("asked") instanceof Map<?, ?> told ? told : Map.of();
        return new VisitNames(text(asked, "call"), text(asked, "by"),
                rows(form, "people").flatMap(person -> text(person, "name").stream()).toList(),
                Stream.of("machines", "lines").flatMap(key -> rows(form, key))
                        .flatMap(row -> text(row, "machine").stream()).distinct().toList(),
                rows(form, "machines").flatMap(machine -> rows(machine, "tasks"))
                        .flatMap(task -> text(task, "task").stream()).distinct().toList(),
                grades(form));
    }

    private static Map<String, String> grades(Map<String, Object> form) {
        Map<String, String> grades = new LinkedHashMap<>();
        rows(form, "people").forEach(person -> text(person, "name")
                .ifPresent(name -> text(person, "grade").ifPresent(grade -> grades.put(name, grade))));
        return grades;
    }

    private static Stream<Map<?, ?>> rows(Map<?, ?> form, String key) {
        return form.get(key) instanceof List<?> rows
                ? rows.stream().flatMap(row -> row instanceof Map<?, ?> map ? Stream.of(map) : Stream.empty())
                : Stream.empty();
    }

    private static Optional<String> text(Map<?, ?> row, String key) {
        return row.get(key) instanceof String text && !text.isBlank() ? Optional.of(text) : Optional.empty();
    }
}

package icequill.answer;

import icequill.files.yaml.Tree;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A customer, site, machine, agreement or request of the book.
 *
 * @param kind as forms are called, or machine
 * @param site where a machine stands, by id
 * @param forgotten the day on which what is personal about a customer was blanked
 * @param form as it can be taken in again; of a machine, its part of a site's form
 * @param sites of a customer, by id
 * @param merged customers, or sites, that were merged into it, by id
 * @param papers that were issued for a customer or an agreement, by number
 */
public record EntrySheet(String kind, String id, Optional<String> site, Optional<LocalDate> forgotten,
        Tree.Branch form, List<String> sites, List<String> merged, List<String> papers) {

    /** What is told already, and which version of forms it is. */
    private static final Set<String> UNTOLD = Set.of("id", "format");
    private static final String MACHINES = "machines";

    public EntrySheet {
        sites = List.copyOf(sites);
        merged = List.copyOf(merged);
        papers = List.copyOf(papers);
    }

    /** An entry of which nothing but its form is told. */
    public static EntrySheet of(String kind, String id, Tree.Branch form) {
        return new EntrySheet(kind, id, Optional.empty(), Optional.empty(), form, List.of(), List.of(), List.of());
    }

    /** Names and values, for a table of text; of a site's machines their ids alone. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        site.ifPresent(where -> rows.add(List.of("site", where)));
        rows.add(List.of("id", id));
        forgotten.ifPresent(day -> rows.add(List.of("forgotten", day.toString())));
        form.entries().entrySet().stream().filter(key -> !UNTOLD.contains(key.getKey()))
                .forEach(key -> flat(key.getKey(), key.getValue(), rows));
        listed("sites", sites, rows);
        listed("merged", merged, rows);
        listed("papers", papers, rows);
        return rows;
    }

    private static void listed(String name, List<String> names, List<List<String>> rows) {
        if (!names.isEmpty()) {
            rows.add(List.of(name, String.join("; ", names)));
        }
    }

    private static void flat(String name, Tree value, List<List<String>> rows) {
        switch (value) {
        case Tree.Branch inner -> inner.entries().forEach((key, part) -> flat(name + "." + key, part, rows));
        case Tree.Row list when name.equals(MACHINES) -> listed(name, list.items().stream()
                .map(machine -> machine instanceof Tree.Branch part && part.entries().get("id") instanceof Tree.Leaf id
                        ? id.text()
                        : "")
                .toList(), rows);
        case Tree.Row list when list.items().stream().allMatch(Tree.Leaf.class::isInstance) ->
            listed(name, list.texts().map(Tree.Leaf::text).toList(), rows);
        case Tree.Row list -> {
            for (int i = 0; i < list.items().size(); i++) {
                flat(name + "[" + (i + 1) + "]", list.items().get(i), rows);
            }
        }
        case Tree.Leaf leaf -> rows.add(List.of(name, leaf.text()));
        }
    }
}

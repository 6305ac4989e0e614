package icequill.answer;

import icequill.files.answer.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What became of a customer, or a site, that was merged into another.
 *
 * @param kind customer or site
 * @param moved ids of what belongs to the survivor now, by what it is
 * @param papers how many stay as they were issued, and are found under the survivor
 * @param taken keys whose values the survivor took over
 * @param dryRun whether it was only looked at
 */
public record MergeResult(String kind, String from, String into, Map<String, List<String>> moved, int papers,
        List<String> taken, List<Difference> differs, boolean dryRun) implements Sheet {

    /** A value of the one that went which the survivor did not take; empty where it has none itself. */
    public record Difference(String key, String from, String into) {}

    public MergeResult {
        moved = new LinkedHashMap<>(moved);
        taken = List.copyOf(taken);
        differs = List.copyOf(differs);
    }

    /** The same, of which nothing was stored. */
    public MergeResult tried() {
        return new MergeResult(kind, from, into, moved, papers, taken, differs, true);
    }

    @Override
    public Object data() {
        return json();
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("merged", from);
        view.put("into", into);
        view.put("dryRun", dryRun);
        view.putAll(moved);
        view.put("papers", papers);
        view.put("taken", taken);
        view.put("differs", differs.stream()
                .map(one -> Map.of("key", one.key(), "from", one.from(), "into", one.into())).toList());
        return view;
    }

    /** In words, a line for each. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add((dryRun ? "Would merge " : "Merged ") + kind + " " + from + " into " + into);
        moved.forEach((what, ids) -> lines.add("  " + what + " that go along: "
                + (ids.isEmpty() ? "none" : String.join(", ", ids))));
        lines.add("  papers that stay as they were issued, and are found under " + into + ": " + papers);
        if (!taken.isEmpty()) {
            lines.add("  taken over: " + String.join(", ", taken));
        }
        differs.forEach(one -> lines.add("  not taken over: " + one.key() + ", " + one.from()
                + (one.into().isEmpty() ? "" : "; " + into + " has " + one.into())));
        return lines;
    }
}

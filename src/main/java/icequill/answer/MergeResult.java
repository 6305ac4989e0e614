package icequill.answer;

import java.util.ArrayList;
import java.util.List;

/**
 * What became of a customer, or a site, that was merged into another.
 *
 * @param kind customer or site
 * @param merged the one that is no more, by id, as is the survivor {@code into}
 * @param moved what belongs to the survivor now
 * @param papers how many stay as they were issued, and are found under the survivor
 * @param taken keys whose values the survivor took over
 * @param dryRun whether it was only looked at
 */
public record MergeResult(String kind, String merged, String into, List<Moved> moved, int papers,
        List<String> taken, List<Difference> differs, boolean dryRun) {

    /**
     * What goes along.
     *
     * @param what sites, accounts, payments; machines, visits, agreements, requests
     */
    public record Moved(String what, List<String> ids) {
        public Moved {
            ids = List.copyOf(ids);
        }
    }

    /** A value of the one that went which the survivor did not take; empty where it has none itself. */
    public record Difference(String key, String from, String into) {}

    public MergeResult {
        moved = List.copyOf(moved);
        taken = List.copyOf(taken);
        differs = List.copyOf(differs);
    }

    /** The same, of which nothing was stored. */
    public MergeResult tried() {
        return new MergeResult(kind, merged, into, moved, papers, taken, differs, true);
    }

    /** In words, a line for each. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add((dryRun ? "Would merge " : "Merged ") + kind + " " + merged + " into " + into);
        moved.forEach(one -> lines.add("  " + one.what() + " that go along: "
                + (one.ids().isEmpty() ? "none" : String.join(", ", one.ids()))));
        lines.add("  papers that stay as they were issued, and are found under " + into + ": " + papers);
        if (!taken.isEmpty()) {
            lines.add("  taken over: " + String.join(", ", taken));
        }
        differs.forEach(one -> lines.add("  not taken over: " + one.key() + ", " + one.from()
                + (one.into().isEmpty() ? "" : "; " + into + " has " + one.into())));
        return lines;
    }
}

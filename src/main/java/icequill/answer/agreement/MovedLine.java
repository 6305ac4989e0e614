package icequill.answer.agreement;

import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;

/**
 * Says in one line what comes in and goes out.
 *
 * @param isNamed whether the site is named where machines move alone, since the agreement is for several
 */
public record MovedLine(Sentences sentences, boolean isNamed) {

    /** Machines as "+ pool bar, - lobby bar", a site as "+ Depot Square (back room)". */
    public String of(Moved moved) {
        return switch (moved.what()) {
        case SITE_IN -> "+ " + moved.siteName() + machines(moved.added());
        case SITE_OUT -> "- " + moved.siteName() + machines(moved.removed());
        case MACHINES -> (isNamed ? moved.siteName() + ": " : "") + signed(moved);
        };
    }

    private static String machines(List<String> names) {
        return names.isEmpty() ? "" : " (" + String.join(", ", names) + ")";
    }

    private String signed(Moved moved) {
        List<String> all = new ArrayList<>(moved.added().stream().map(name -> "+ " + name).toList());
        moved.removed().forEach(name -> all.add("- " + name));
        return all.isEmpty() ? sentences.word("agreement.changed-elsewhere") : String.join(", ", all);
    }
}

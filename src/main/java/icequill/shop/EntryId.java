package icequill.shop;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.util.Optional;
import java.util.regex.Pattern;

/** What customers, sites, machines and visits are called in the book; never a path, nor anything that a terminal would obey. */
public final class EntryId {

    private static final Pattern FORM = Pattern.compile("[a-z0-9][a-z0-9-]{0,59}");

    private EntryId() {
    }

    /** A problem when it is no such name. */
    public static Optional<Problem> problem(String id, Place place) {
        return FORM.matcher(id).matches()
                ? Optional.empty()
                : Optional.of(new Problem(Code.NOT_ALLOWED, place, "the id \"" + id + "\"",
                        "up to 60 small letters, digits and hyphens, such as mill-lane"));
    }
}

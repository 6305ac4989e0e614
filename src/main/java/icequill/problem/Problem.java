package icequill.problem;

import java.util.Collection;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * One thing wrong with input. The address of a database is shown without its password.
 *
 * @param message what was found, as a sentence without a full stop
 * @param allowed what would be right, as a sentence without a full stop; may be empty
 */
public record Problem(Code code, Place place, String message, String allowed) {

    private static final int MOST_NAMES = 40;

    public Problem {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(allowed, "allowed");
        message = Discretion.of(message);
        allowed = Discretion.of(allowed);
    }

    /** A name that refers to nothing, with the nearest of the known names. */
    public static Problem unknownName(Place place, String kind, String found, Collection<String> known) {
        return new Problem(Code.UNKNOWN_NAME, place, "there is no " + kind + " \"" + found + "\"", oneOf(found, known));
    }

    /** Lists the allowed names, as many as one reads, the nearest one first where one is near. */
    public static String oneOf(String found, Collection<String> known) {
        if (known.isEmpty()) {
            return "none is defined yet";
        }
        Set<String> names = new TreeSet<>(known);
        String list = "allowed: " + names.stream().limit(MOST_NAMES).collect(Collectors.joining(", "))
                + (names.size() > MOST_NAMES ? " and " + (names.size() - MOST_NAMES) + " more" : "");
        return nearest(found, known).map(name -> "did you mean \"" + name + "\"? " + list).orElse(list);
    }

    /** The known name that a misspelled one most likely stands for. */
    public static Optional<String> nearest(String found, Collection<String> known) {
        return Nearest.to(found, known);
    }

    /** The whole report of this problem on one line: place, what was found, what is allowed. */
    public String text() {
        String where = place.file().isEmpty() ? "" : place.reference() + ": ";
        String path = place.path().isEmpty() ? "" : place.path() + ": ";
        return where + path + message + (allowed.isEmpty() ? "" : " (" + allowed + ")");
    }
}

package icequill.problem;

import java.util.Objects;

/**
 * Where something stands in the shop's files.
 *
 * @param file relative to the shop folder; empty when the value came from no file
 * @param line from 1; 0 when unknown
 * @param path keys and list positions from the top of the file, for example {@code people[0].arrived}; may be empty
 */
public record Place(String file, int line, String path) {

    /** For values that were not read from a file. */
    public static final Place NOWHERE = new Place("", 0, "");

    public Place {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(path, "path");
        file = Discretion.of(file);
        path = Discretion.of(path);
        Check.inRange(line, 0, Integer.MAX_VALUE, "line");
    }

    public static Place ofFile(String file) {
        return new Place(file, 0, "");
    }

    /** {@code file:line}, or less when less is known. */
    public String reference() {
        return line == 0 ? file : file + ":" + line;
    }
}

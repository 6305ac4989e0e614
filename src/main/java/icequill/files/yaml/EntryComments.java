package icequill.files.yaml;

import icequill.problem.Place;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What the comments in the files of a folder say of their entries: beside the entry, else above it, else beside or above what it is part of, else beside
 * the dates of the file. For one thread.
 */
public final class EntryComments {

    private final Path folder;
    private final Map<String, List<String>> files = new HashMap<>();

    public EntryComments(Path folder) {
        this.folder = folder;
    }

    /** The line on which a key stands beside the one of a place; the place itself where there is none. */
    public Place at(Place beside, String key) {
        List<String> lines = lines(beside.file());
        if (beside.line() < 1 || beside.line() > lines.size()) {
            return beside;
        }
        int own = column(lines.get(beside.line() - 1));
        return IntStream.rangeClosed(first(lines, beside.line()), lines.size())
                .takeWhile(line -> line <= beside.line() || isSame(lines.get(line - 1), own))
                .filter(line -> column(lines.get(line - 1)) == own && named(lines.get(line - 1)).startsWith(key + ":"))
                .mapToObj(line -> new Place(beside.file(), line, beside.path())).findFirst().orElse(beside);
    }

    /** The first line of the entry that a line is part of. */
    private static int first(List<String> lines, int line) {
        int own = column(lines.get(line - 1));
        int first = line;
        while (first > 1 && !(isItem(lines.get(first - 1)) && column(lines.get(first - 1)) == own)
                && (isEmpty(lines.get(first - 2)) || column(lines.get(first - 2)) >= own)) {
            first--;
        }
        return first;
    }

    /** Whether a line belongs to the same entry as one of a column. */
    private static boolean isSame(String line, int own) {
        return isEmpty(line) || column(line) > own || (column(line) == own && !isItem(line));
    }

    private static boolean isItem(String line) {
        return line.strip().startsWith("- ");
    }

    private static String named(String line) {
        return line.strip().replaceFirst("^- +", "");
    }

    /** Where the key of a line begins. */
    private static int column(String line) {
        return line.indexOf(named(line));
    }

    /** What is said of an entry; empty where nothing is. */
    public Optional<String> of(Place entry) {
        List<String> lines = lines(entry.file());
        if (entry.line() < 1 || entry.line() > lines.size()) {
            return Optional.empty();
        }
        Set<String> beside = new LinkedHashSet<>();
        for (int line = entry.line(); line <= end(lines, entry.line()); line++) {
            Optional.of(lines.get(line - 1)).filter(text -> !isEmpty(text)).flatMap(EntryComments::comment)
                    .ifPresent(beside::add);
        }
        return beside.isEmpty() ? around(lines, entry.line()) : Optional.of(String.join("; ", beside));
    }

    private static Optional<String> around(List<String> lines, int entry) {
        Optional<String> above = above(lines, entry);
        if (above.isPresent()) {
            return above;
        }
        int parent = parent(lines, entry);
        if (parent == 0) {
            return lines.stream().filter(line -> line.startsWith("effective:")).findFirst()
                    .flatMap(EntryComments::comment);
        }
        return comment(lines.get(parent - 1)).or(() -> around(lines, parent));
    }

    /** The lines of comment right above a line. */
    private static Optional<String> above(List<String> lines, int entry) {
        List<String> comments = new ArrayList<>();
        for (int line = entry - 1; line > 0 && isComment(lines.get(line - 1)); line--) {
            comments.addFirst(lines.get(line - 1).strip().substring(1).strip());
        }
        return comments.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", comments));
    }

    /** The nearest line above that is further left; 0 where there is none. */
    private static int parent(List<String> lines, int entry) {
        int own = column(lines.get(entry - 1));
        int line = entry - 1;
        while (line > 0 && (isEmpty(lines.get(line - 1)) || column(lines.get(line - 1)) >= own)) {
            line--;
        }
        return line;
    }

    /** The last line of an entry. */
    private static int end(List<String> lines, int entry) {
        int own = column(lines.get(entry - 1));
        int last = entry;
        for (int line = entry + 1; line <= lines.size()
                && (isEmpty(lines.get(line - 1)) || column(lines.get(line - 1)) > own); line++) {
            last = isEmpty(lines.get(line - 1)) ? last : line;
        }
        return last;
    }

    private static boolean isEmpty(String line) {
        return line.isBlank() || isComment(line);
    }

    private static boolean isComment(String line) {
        return line.stripLeading().startsWith("#");
    }

    /** What stands behind a value; a sign within quotation marks begins no comment. */
    private static Optional<String> comment(String line) {
        boolean isQuoted = false;
        for (int i = 0; i < line.length(); i++) {
            isQuoted ^= line.charAt(i) == '"';
            if (!isQuoted && line.charAt(i) == '#' && i > 0 && Character.isWhitespace(line.charAt(i - 1))) {
                return Optional.of(line.substring(i + 1).strip()).filter(text -> !text.isEmpty());
            }
        }
        return Optional.empty();
    }

    private List<String> lines(String file) {
        return files.computeIfAbsent(file, name -> ShippedMarks.lines(folder.resolve(name)));
    }
}

package icequill.office.demo;

import icequill.files.disk.Folder;
import icequill.files.disk.Hash;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The folder that a demo fills. A list in it says what the demo made, file by file with its hash; only what is still as listed is
 * ever removed, and only where there is nothing else. A demo is made in a room of its own within the folder and moved to its place
 * when it is whole, list first, so that what a stopped one left is known as its own.
 */
record DemoFolder(Path folder) {

    private static final String ROOM = ".icequill-demo-unfinished-";
    private static final String LIST = ".icequill-demo";
    private static final String TITLE = "A demo made these files, and replaces them when it is run again.";
    private static final String IS_FOLDER = "folder";
    private static final String IS_LINK = "link";
    /** Says who writes in the book, and is no part of it. */
    private static final Set<String> UNHASHED = Set.of("book/book.lock");
    private static final String GAP = "  ";
    private static final int MOST_NAMED = 5;

    /**
     * A room to make a demo in, not there yet. What stopped demos left in rooms of theirs is removed; what is in the way of the demo is
     * a problem, and then all stays as it is.
     */
    Validated<Path> room() {
        try {
            Problems problems = new Problems();
            problems.addAll(inTheWay());
            for (Path room : rooms()) {
                long maker = maker(room);
                if (ProcessHandle.of(maker).isPresent()) {
                    problems.add(Code.ALREADY_EXISTS, Place.ofFile(folder.toString()),
                            "process " + maker + " is making a demo there", "another folder, or when it is done");
                }
            }
            if (problems.isEmpty()) {
                for (Path room : rooms()) {
                    delete(room);
                }
            }
            return problems.or(() -> folder.resolve(ROOM + ProcessHandle.current().pid()));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Puts what was made in a room into its place, instead of an earlier demo. */
    Validated<Path> filled(Path room) {
        try {
            List<Problem> changed = inTheWay();
            if (!changed.isEmpty()) {
                return new Validated.Invalid<>(changed);
            }
            new DemoFolder(room).list();
            for (String name : there().keySet().stream().toList().reversed()) {
                Files.delete(folder.resolve(name));
            }
            Files.move(room.resolve(LIST), folder.resolve(LIST), StandardCopyOption.REPLACE_EXISTING);
            for (Path made : in(room)) {
                Files.move(made, folder.resolve(made.getFileName()));
            }
            Files.delete(room);
            return Validated.valid(folder);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Removes a room; one that was moved is gone. */
    static void delete(Path room) {
        try {
            if (Files.isDirectory(room, LinkOption.NOFOLLOW_LINKS)) {
                Folder.delete(room);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** What is not the demo's own, or was changed since. */
    private List<Problem> inTheWay() throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        if (!Files.isDirectory(folder)) {
            return List.of(new Problem(Code.ALREADY_EXISTS, Place.ofFile(folder.toString()), "it is no folder",
                    "a new or empty folder"));
        }
        Map<String, String> listed = listed();
        List<String> foreign = there().entrySet().stream()
                .filter(entry -> !entry.getValue().equals(listed.get(entry.getKey())))
                .map(Map.Entry::getKey).toList();
        return foreign.isEmpty() ? List.of() : List.of(inTheWay(foreign));
    }

    private List<Path> rooms() throws IOException {
        return in(folder).stream().filter(DemoFolder::isRoom).toList();
    }

    /** A link by such a name is nobody's room. */
    private static boolean isRoom(Path file) {
        return file.getFileName().toString().matches(Pattern.quote(ROOM) + "[0-9]{1,18}")
                && Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS);
    }

    private static long maker(Path room) {
        return Long.parseLong(room.getFileName().toString().substring(ROOM.length()));
    }

    private static List<Path> in(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    /** Notes what the demo made. */
    private void list() throws IOException {
        List<String> lines = new ArrayList<>(List.of(TITLE));
        there().forEach((name, hash) -> lines.add(hash + GAP + name));
        Files.write(folder.resolve(LIST), lines);
    }

    private Map<String, String> listed() throws IOException {
        if (!Files.isRegularFile(folder.resolve(LIST), LinkOption.NOFOLLOW_LINKS)) {
            return Map.of();
        }
        return Files.readAllLines(folder.resolve(LIST)).stream().filter(line -> line.contains(GAP))
                .collect(Collectors.toMap(line -> line.substring(line.indexOf(GAP) + GAP.length()),
                        line -> line.substring(0, line.indexOf(GAP)), (first, again) -> again));
    }

    /** All names in the folder but those of rooms, folders before what is in them, each with what stands under it. */
    private Map<String, String> there() throws IOException {
        Map<String, String> there = new TreeMap<>();
        for (Path top : in(folder)) {
            if (isRoom(top) || isList(top)) {
                continue;
            }
            try (Stream<Path> files = Files.walk(top)) {
                for (Path file : files.toList()) {
                    String name = folder.relativize(file).toString().replace('\\', '/');
                    there.put(name, content(name, file));
                }
            }
        }
        return there;
    }

    private static boolean isList(Path file) {
        return file.getFileName().toString().equals(LIST) && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }

    private static String content(String name, Path file) throws IOException {
        if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
            return IS_FOLDER;
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return IS_LINK;
        }
        return UNHASHED.contains(name) ? "-" : hash(file);
    }

    private static String hash(Path file) throws IOException {
        return Hash.of(Files.readAllBytes(file));
    }

    private Problem inTheWay(List<String> foreign) {
        String more = foreign.size() > MOST_NAMED ? ", and " + (foreign.size() - MOST_NAMED) + " more" : "";
        return new Problem(Code.ALREADY_EXISTS, Place.ofFile(folder.toString()),
                "the folder holds what no demo made, or what was changed since: "
                        + String.join(", ", foreign.subList(0, Math.min(MOST_NAMED, foreign.size()))) + more,
                "a new or empty folder, or one with an earlier demo and nothing else");
    }
}

package icequill.office.demo;

import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The folder that a demo fills. A list in it says what the demo made, file by file with its hash; only what is still as listed is
 * ever removed, and only where there is nothing else.
 */
record DemoFolder(Path folder) {

    private static final String LIST = ".icequill-demo";
    private static final String TITLE = "A demo made these files, and replaces them when it is run again.";
    private static final String IS_FOLDER = "folder";
    private static final String IS_LINK = "link";
    /** Says who writes in the book, and is no part of it. */
    private static final Set<String> UNHASHED = Set.of("book/book.lock");
    private static final String GAP = "  ";
    private static final int MOST_NAMED = 5;

    /** Removes an earlier demo; what is not the demo's own, or was changed since, is a problem, and then all stays as it is. */
    Checked<Path> cleared() {
        try {
            if (!Files.isRegularFile(folder.resolve(LIST), LinkOption.NOFOLLOW_LINKS)) {
                return Checked.sound(folder);
            }
            Map<String, String> listed = listed();
            Map<String, String> there = there();
            List<String> foreign = there.entrySet().stream()
                    .filter(entry -> !entry.getValue().equals(listed.get(entry.getKey())))
                    .map(Map.Entry::getKey).toList();
            if (!foreign.isEmpty()) {
                return Checked.faulty(inTheWay(foreign));
            }
            for (String name : there.keySet().stream().toList().reversed()) {
                Files.delete(folder.resolve(name));
            }
            Files.delete(folder.resolve(LIST));
            return Checked.sound(folder);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Notes what the demo made. */
    void list() {
        try {
            List<String> lines = new ArrayList<>(List.of(TITLE));
            there().forEach((name, hash) -> lines.add(hash + GAP + name));
            Files.write(folder.resolve(LIST), lines);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private Map<String, String> listed() throws IOException {
        return Files.readAllLines(folder.resolve(LIST)).stream().filter(line -> line.contains(GAP))
                .collect(Collectors.toMap(line -> line.substring(line.indexOf(GAP) + GAP.length()),
                        line -> line.substring(0, line.indexOf(GAP)), (first, again) -> again));
    }

    /** All names in the folder, folders before what is in them, each with what stands under it. */
    private Map<String, String> there() throws IOException {
        Map<String, String> there = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.toList()) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                if (!name.isEmpty() && !name.equals(LIST)) {
                    there.put(name, content(name, file));
                }
            }
        }
        return there;
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
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private Problem inTheWay(List<String> foreign) {
        String more = foreign.size() > MOST_NAMED ? ", and " + (foreign.size() - MOST_NAMED) + " more" : "";
        return new Problem(Code.ALREADY_EXISTS, Place.ofFile(folder.toString()),
                "the folder holds what no demo made, or what was changed since: "
                        + String.join(", ", foreign.subList(0, Math.min(MOST_NAMED, foreign.size()))) + more,
                "a new or empty folder, or one with an earlier demo and nothing else");
    }
}

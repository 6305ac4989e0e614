package icequill.files.yaml;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Values of a shop's files that are still as they came with the program: a comment on their line says so, until the shop puts in
 * its own and takes the mark away.
 *
 * @param place of the line
 * @param line without its comment
 * @param printed texts and prices of the line, as a paper might show them; what only the owner sees is not among them
 */
public record ShippedMarks(Place place, String line, Set<String> printed) {

    private static final String MARK = "as shipped";
    private static final String INVENTED = "invented for the demo";
    private static final Set<String> OWNERS = Set.of("wage", "cost", "markup");
    private static final Set<String> WORKED_WITH = Set.of("effective", "label", "qualified", "certificates",
            "priceStep");
    private static final Pattern STEP = Pattern.compile("[.]|\\[[0-9]+]");
    private static final int SHORTEST = 3;

    public ShippedMarks {
        printed = Set.copyOf(printed);
    }

    /** The text of a file as a new shop gets it. */
    public static String marked(String shipped) {
        return shipped.replace(INVENTED, MARK + ", put in your own and take this away");
    }

    /** Those of a shop's settings and rates, in the order of files and lines. */
    public static List<ShippedMarks> of(Path folder) {
        return Stream.of(files(folder, ""), files(folder, "pricing")).flatMap(List::stream)
                .flatMap(file -> in(file, folder.relativize(file).toString()).stream()).toList();
    }

    private static List<Path> files(Path folder, String within) {
        Path place = folder.resolve(within);
        if (!Files.isDirectory(place)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(place)) {
            return files.filter(file -> file.getFileName().toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * Those of one file, by line; none where it cannot be read.
     *
     * @param name of the file, as problems are to show it
     */
    public static List<ShippedMarks> in(Path file, String name) {
        List<String> lines = lines(file);
        if (lines.stream().noneMatch(ShippedMarks::isMarked)) {
            return List.of();
        }
        List<Tree.Leaf> leaves = YamlReader.readAll(file, name, new Problems()).stream()
                .flatMap(ShippedMarks::leaves).toList();
        return IntStream.range(0, lines.size()).filter(i -> isMarked(lines.get(i)))
                .mapToObj(i -> new ShippedMarks(new Place(name, i + 1, ""), value(lines.get(i)),
                        leaves.stream().filter(leaf -> leaf.place().line() == i + 1).filter(ShippedMarks::isPrinted)
                                .map(Tree.Leaf::text).collect(Collectors.toCollection(TreeSet::new))))
                .toList();
    }

    /** The lines of a file; none where it cannot be read, which whoever reads it for its values reports. */
    static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (MalformedInputException | NoSuchFileException unreadable) {
            return List.of();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Whether a comment says that what stands beside it is as shipped. */
    public static boolean isMark(String comment) {
        return comment.toLowerCase(Locale.ROOT).contains(MARK);
    }

    /** A comment by itself marks nothing. */
    private static boolean isMarked(String line) {
        int comment = line.indexOf('#');
        return comment > 0 && !line.substring(0, comment).isBlank()
                && isMark(line.substring(comment));
    }

    private static String value(String line) {
        return line.substring(0, line.lastIndexOf('#')).strip();
    }

    private static Stream<Tree.Leaf> leaves(Tree tree) {
        return switch (tree) {
        case Tree.Branch branch -> branch.entries().values().stream().flatMap(ShippedMarks::leaves);
        case Tree.Row row -> row.items().stream().flatMap(ShippedMarks::leaves);
        case Tree.Leaf leaf -> Stream.of(leaf);
        };
    }

    /**
     * Names and prices; a bare whole number might stand on a paper for anything. What is chosen from the program's own words is
     * printed in other ones, in the paper's language, if at all.
     */
    private static boolean isPrinted(Tree.Leaf leaf) {
        List<String> keys = List.of(STEP.split(leaf.place().path()));
        return Stream.of(OWNERS, WORKED_WITH).flatMap(Set::stream).noneMatch(keys::contains)
                && leaf.text().length() >= SHORTEST
                && (leaf.kind() == Tree.Leaf.Kind.TEXT || leaf.text().contains("."));
    }

    /** That the value is still as shipped. */
    public Problem problem() {
        return new Problem(Code.AS_SHIPPED, place, "still as shipped: " + line,
                "your own value, and the mark on the line taken away");
    }
}

package icequill.cli.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.text.WordUtils;

/** Sets rows of text into columns, as wide as the terminal and no wider where its text can be broken. */
public final class Table {

    private static final String GAP = "  ";
    /** No text is squeezed below it, as columns of single syllables read worse than lines that run over. */
    private static final int LEAST_WIDTH = 12;
    /** Words up to this length, such as most ids, are never broken. */
    private static final int LONGEST_WHOLE_WORD = 32;

    private Table() {
    }

    /**
     * A table with a head.
     *
     * @param left how many columns, from the left, are text; the others are numbers, stand to the right and are never broken
     */
    public static String of(List<String> head, List<List<String>> rows, int left) {
        return of(head, rows, left, Terminal.columns());
    }

    /** Without a head. */
    public static String of(List<List<String>> rows, int left) {
        List<List<String>> plain = plain(rows);
        return lines(plain, fitted(plain, left, Terminal.columns()), left);
    }

    static String of(List<String> head, List<List<String>> rows, int left, int columns) {
        List<List<String>> all = new ArrayList<>();
        all.add(head);
        all.addAll(plain(rows));
        int[] widths = fitted(all, left, columns);
        String rule = IntStream.of(widths).mapToObj("-"::repeat).collect(Collectors.joining(GAP));
        return Stream.of(lines(all.subList(0, 1), widths, left), rule, lines(all.subList(1, all.size()), widths, left))
                .filter(part -> !part.isEmpty()).collect(Collectors.joining(System.lineSeparator()));
    }

    private static List<List<String>> plain(List<List<String>> rows) {
        return rows.stream().map(row -> row.stream().map(PlainText::line).toList()).toList();
    }

    /** How wide each column is: as its widest cell, but that the widest text gives way until all fit. */
    private static int[] fitted(List<List<String>> rows, int left, int columns) {
        int[] widths = IntStream.range(0, rows.getFirst().size())
                .map(column -> rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0)).toArray();
        int[] least = IntStream.range(0, left).map(column -> longestWord(rows, column)).toArray();
        int excess = IntStream.of(widths).sum() + GAP.length() * (widths.length - 1) - columns;
        while (excess > 0) {
            OptionalInt widest = IntStream.range(0, left).filter(column -> widths[column] > least[column])
                    .reduce((one, other) -> widths[other] > widths[one] ? other : one);
            if (widest.isEmpty()) {
                break;
            }
            widths[widest.getAsInt()]--;
            excess--;
        }
        return widths;
    }

    private static int longestWord(List<List<String>> rows, int column) {
        return rows.stream().flatMap(row -> Stream.of(row.get(column).split(" "))).mapToInt(String::length)
                .filter(length -> length <= LONGEST_WHOLE_WORD).reduce(LEAST_WIDTH, Math::max);
    }

    private static String lines(List<List<String>> rows, int[] widths, int left) {
        return rows.stream().flatMap(row -> broken(row, widths, left)).map(row -> line(row, widths, left))
                .collect(Collectors.joining(System.lineSeparator()));
    }

    /** A row as one or more lines. */
    private static Stream<List<String>> broken(List<String> row, int[] widths, int left) {
        List<List<String>> cells = IntStream.range(0, row.size()).mapToObj(column -> column < left
                && row.get(column).length() > widths[column]
                        ? WordUtils.wrap(row.get(column), widths[column], "\n", true).lines().toList()
                        : List.of(row.get(column)))
                .toList();
        int height = cells.stream().mapToInt(List::size).max().orElse(1);
        return IntStream.range(0, height)
                .mapToObj(at -> cells.stream().map(cell -> at < cell.size() ? cell.get(at) : "").toList());
    }

    private static String line(List<String> row, int[] widths, int left) {
        return IntStream.range(0, row.size()).mapToObj(column -> cell(row.get(column), widths[column], column < left))
                .collect(Collectors.joining(GAP)).stripTrailing();
    }

    private static String cell(String text, int width, boolean left) {
        String padding = " ".repeat(width - text.length());
        return left ? text + padding : padding + text;
    }
}

package icequill.cli.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Sets rows of text into columns. */
public final class Table {

    private static final String GAP = "  ";

    private Table() {
    }

    /**
     * A table with a head.
     *
     * @param left how many columns, from the left, are text; the others are numbers and stand to the right
     */
    public static String of(List<String> head, List<List<String>> rows, int left) {
        List<List<String>> all = new ArrayList<>();
        all.add(head);
        all.addAll(plain(rows));
        int[] widths = widths(all);
        String rule = IntStream.of(widths).mapToObj("-"::repeat).collect(Collectors.joining(GAP));
        List<String> lines = new ArrayList<>();
        lines.add(line(head, widths, left));
        lines.add(rule);
        all.subList(1, all.size()).forEach(row -> lines.add(line(row, widths, left)));
        return String.join(System.lineSeparator(), lines);
    }

    /** Without a head. */
    public static String of(List<List<String>> rows, int left) {
        List<List<String>> plain = plain(rows);
        int[] widths = widths(plain);
        return plain.stream().map(row -> line(row, widths, left)).collect(Collectors.joining(System.lineSeparator()));
    }

    private static List<List<String>> plain(List<List<String>> rows) {
        return rows.stream().map(row -> row.stream().map(PlainText::line).toList()).toList();
    }

    private static int[] widths(List<List<String>> rows) {
        return IntStream.range(0, rows.getFirst().size())
                .map(column -> rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0)).toArray();
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

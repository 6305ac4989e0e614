package icequill.files;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;

/**
 * Lists as CSV (RFC 4180, in UTF-8), with a head. A cell of text that a spreadsheet would take for a formula begins with an
 * apostrophe, which is taken off again on reading.
 */
public final class CsvFile {

    private static final int MOST_BYTES = 100_000_000;
    private static final String FORMULA = "=+-@\t\r";
    private static final char GUARD = '\'';

    private CsvFile() {
    }

    /** A row by the names of its head, with the line on which it begins. */
    public record Row(String file, int line, Map<String, String> cells) {

        public Row {
            cells = new LinkedHashMap<>(cells);
        }

        /** Where a cell stands. */
        public Place place(String column) {
            return new Place(file, line, column);
        }

        /** A cell; empty when there is none or nothing in it. */
        public Optional<String> cell(String column) {
            return Optional.ofNullable(cells.get(column)).map(String::strip).filter(text -> !text.isEmpty());
        }
    }

    /**
     * Reads a list; what is wrong with it as a whole is reported.
     *
     * @param known names that may stand in its head
     * @param needed those that must
     */
    public static List<Row> read(Path file, Set<String> known, Set<String> needed, Problems problems) {
        String name = file.toString();
        try {
            if (Files.size(file) > MOST_BYTES) {
                problems.add(Code.TOO_LARGE, Place.ofFile(name), "the file has " + Files.size(file) + " bytes",
                        "at most " + MOST_BYTES);
                return List.of();
            }
            String text = Files.readString(file);
            return rows(text.startsWith("\uFEFF") ? text.substring(1) : text, name, known, needed, problems);
        } catch (NoSuchFileException missing) {
            problems.add(Code.UNREADABLE, Place.ofFile(name), "there is no such file", "");
        } catch (CharacterCodingException notUtf8) {
            problems.add(Code.UNREADABLE, Place.ofFile(name), "the file is not in UTF-8", "save it as CSV in UTF-8");
        } catch (IOException | UncheckedIOException unreadable) {
            problems.add(Code.UNREADABLE, Place.ofFile(name), "not CSV: " + unreadable.getMessage(),
                    "cells with commas between them, those that hold commas or quotes in quotes");
        }
        return List.of();
    }

    private static List<Row> rows(String text, String name, Set<String> known, Set<String> needed, Problems problems)
            throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true)
                .setAllowMissingColumnNames(true).setDuplicateHeaderMode(DuplicateHeaderMode.ALLOW_ALL).get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            List<String> head = parser.getHeaderNames().stream().map(String::strip).toList();
            checkHead(head, name, known, needed, problems);
            List<Row> rows = new ArrayList<>();
            int line = Math.toIntExact(parser.getCurrentLineNumber()) + 1;
            for (CSVRecord record : parser) {
                if (!isBlank(record)) {
                    rows.add(row(record, head, name, line, problems));
                }
                line = Math.toIntExact(parser.getCurrentLineNumber()) + 1;
            }
            return rows;
        }
    }

    private static void checkHead(List<String> head, String name, Set<String> known, Set<String> needed,
            Problems problems) {
        Set<String> seen = new HashSet<>();
        for (String column : head) {
            Place place = new Place(name, 1, column);
            if (!known.contains(column)) {
                problems.add(Code.UNKNOWN_KEY, place, "there is no column \"" + column + "\" here",
                        Problem.oneOf(column, known));
            } else if (!seen.add(column)) {
                problems.add(Code.DUPLICATE_KEY, place, "the column stands here a second time", "each column once");
            }
        }
        needed.stream().filter(column -> !head.contains(column)).sorted().forEach(column -> problems
                .add(Code.MISSING, new Place(name, 1, column), "the column is missing", "a head that names it"));
    }

    private static boolean isBlank(CSVRecord record) {
        return record.stream().allMatch(String::isBlank);
    }

    private static Row row(CSVRecord record, List<String> head, String name, int line, Problems problems) {
        if (record.size() > head.size()) {
            problems.add(Code.NOT_ALLOWED, new Place(name, line, ""),
                    record.size() + " cells, but the head has " + head.size(),
                    "cells that hold commas in quotes");
        }
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(head.size(), record.size()); i++) {
            cells.putIfAbsent(head.get(i), plain(record.get(i)));
        }
        return new Row(name, line, cells);
    }

    /**
     * Writes a list as CSV.
     *
     * @param numbers columns, from 0, that hold numbers the program made, which need no guard
     * @param rows gives each row to whom it is given
     */
    public static void write(OutputStream out, List<String> head, Set<Integer> numbers,
            Consumer<Consumer<List<String>>> rows) throws IOException {
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        line(text, head);
        rows.accept(row -> line(text, IntStream.range(0, row.size())
                .mapToObj(i -> numbers.contains(i) ? row.get(i) : guarded(row.get(i))).toList()));
        text.flush();
    }

    private static void line(Appendable text, List<String> cells) {
        try {
            CSVFormat.RFC4180.printRecord(text, cells.toArray());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static String guarded(String text) {
        return isFormula(text) ? GUARD + text : text;
    }

    private static String plain(String cell) {
        return !cell.isEmpty() && cell.charAt(0) == GUARD && isFormula(cell.substring(1)) ? cell.substring(1) : cell;
    }

    private static boolean isFormula(String text) {
        return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0;
    }
}

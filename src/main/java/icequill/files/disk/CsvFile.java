package icequill.files.disk;

import icequill.files.yaml.FolderFiles;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;

/**
 * Lists as CSV (RFC 4180, in UTF-8), with a head. Commas part the cells, or semicolons, as the head has it; one of them in the
 * whole list. Names in the head may be written in capitals. A cell of text that a spreadsheet would take for a formula begins
 * with an apostrophe, which is taken off again on reading.
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
     * @param known names that may stand in its head; none to let any others stand there
     * @param needed those that must
     * @param most bytes
     */
    public static List<Row> read(Path file, Set<String> known, Set<String> needed, int most, Problems problems) {
        String name = file.toString();
        if (FolderFiles.isEndless(file)) {
            problems.add(Code.UNREADABLE, Place.ofFile(name), "it is no ordinary file",
                    "a list, no pipe and no folder");
            return List.of();
        }
        try {
            if (Files.size(file) > most) {
                problems.add(Code.TOO_LARGE, Place.ofFile(name), "the file has " + Files.size(file) + " bytes",
                        "at most " + most);
                return List.of();
            }
            byte[] bytes = Files.readAllBytes(file);
            Optional<String> text = text(bytes);
            if (text.isEmpty()) {
                problems.add(Code.UNREADABLE, new Place(name, lineNotUtf8(bytes), ""),
                        "the line is not in UTF-8; it looks like Windows-1252", "save the list as CSV in UTF-8");
                return List.of();
            }
            return read(text.get(), name, known, needed, problems);
        } catch (NoSuchFileException missing) {
            problems.add(Code.UNREADABLE, Place.ofFile(name), "there is no such file", "");
        } catch (IOException unreadable) {
            notCsv(name, unreadable, problems);
        }
        return List.of();
    }

    /**
     * The same of a list that was typed.
     *
     * @param name by which problems name it
     */
    public static List<Row> read(String text, String name, Set<String> known, Set<String> needed, Problems problems) {
        try {
            return rows(text.startsWith("\uFEFF") ? text.substring(1) : text, name, known, needed, problems);
        } catch (IOException | UncheckedIOException unreadable) {
            notCsv(name, unreadable, problems);
            return List.of();
        }
    }

    private static void notCsv(String name, Exception unreadable, Problems problems) {
        problems.add(Code.UNREADABLE, Place.ofFile(name), "not CSV: " + unreadable.getMessage(),
                "cells with commas between them, those that hold commas or quotes in quotes");
    }

    /** The names in a list's head, in small letters; none where it cannot be read, which reading it will tell. */
    public static Set<String> head(Path file) {
        if (FolderFiles.isEndless(file)) {
            return Set.of();
        }
        try (BufferedReader lines = Files.newBufferedReader(file)) {
            return Optional.ofNullable(lines.readLine()).stream().flatMap(line -> Arrays.stream(line.split("[,;]")))
                    .map(name -> name.replaceAll("[\"\uFEFF]", "").strip().toLowerCase(Locale.ROOT))
                    .collect(Collectors.toSet());
        } catch (IOException unreadable) {
            return Set.of();
        }
    }

    /** The same for a list of up to 100 million bytes. */
    public static List<Row> read(Path file, Set<String> known, Set<String> needed, Problems problems) {
        return read(file, known, needed, MOST_BYTES, problems);
    }

    private static Optional<String> text(byte[] bytes) {
        try {
            return Optional.of(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
        } catch (CharacterCodingException notUtf8) {
            return Optional.empty();
        }
    }

    /** The first line that is not in UTF-8, from 1. */
    private static int lineNotUtf8(byte[] bytes) {
        int line = 1;
        int from = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                if (text(Arrays.copyOfRange(bytes, from, i)).isEmpty()) {
                    return line;
                }
                line++;
                from = i + 1;
            }
        }
        return line;
    }

    /** What parts the names of the head, outside of quotes, parts the cells of all lines. */
    private static char separator(String text) {
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == '"') {
                quoted = !quoted;
            } else if (!quoted && (letter == ',' || letter == ';')) {
                return letter;
            } else if (!quoted && letter == '\n') {
                return ',';
            }
        }
        return ',';
    }

    private static List<Row> rows(String text, String name, Set<String> known, Set<String> needed, Problems problems)
            throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator(text)).setHeader()
                .setSkipHeaderRecord(true)
                .setAllowMissingColumnNames(true).setDuplicateHeaderMode(DuplicateHeaderMode.ALLOW_ALL).get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            Set<String> names = new HashSet<>(known);
            names.addAll(needed);
            List<String> head = parser.getHeaderNames().stream().map(column -> named(column.strip(), names)).toList();
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

    private static String named(String column, Set<String> names) {
        return names.stream().filter(column::equalsIgnoreCase).findFirst().orElse(column);
    }

    private static void checkHead(List<String> head, String name, Set<String> known, Set<String> needed,
            Problems problems) {
        Set<String> seen = new HashSet<>();
        for (String column : head) {
            Place place = new Place(name, 1, column);
            if (!known.isEmpty() && !known.contains(column)) {
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
                    "as many as the head has, cells that hold what parts them in quotes");
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

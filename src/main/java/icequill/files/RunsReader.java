package icequill.files;

import icequill.forecast.Run;
import icequill.party.SiteKind;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads a table of runs: from a cleaning or brushing to the stop that dirt brought about, or to the next cleaning without one, or
 * to a day on which the machine still ran. Commas or semicolons part the columns, whose names stand in the first line.
 */
public final class RunsReader {

    private static final List<String> COLUMNS = List.of("machine", "kind", "side", "from", "until", "ended");
    private static final List<String> ENDS = List.of("stopped", "cleaned", "running");
    private static final double DAYS_OF_A_MONTH = 365.25 / 12;
    private static final long MOST_BYTES = 5_000_000;

    private final String file;
    private final Problems problems = new Problems();
    private List<String> heads = List.of();
    private int line;

    /** The side of a machine that dirt settles on. */
    public enum Side {
        CONDENSER, WATER
    }

    /** A run of one side. */
    public record Recorded(Side side, Run run) {}

    private RunsReader(String file) {
        this.file = file;
    }

    /** All runs of a table, or everything that is wrong with it, each with its line and column. */
    public static Checked<List<Recorded>> read(Path file) {
        RunsReader reader = new RunsReader(String.valueOf(file.getFileName()));
        try {
            if (Files.size(file) > MOST_BYTES) {
                return Checked.faulty(new Problem(Code.TOO_LARGE, Place.ofFile(reader.file),
                        "the table is larger than we read", "up to " + MOST_BYTES + " bytes"));
            }
            return reader.table(Files.readAllLines(file, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            return Checked.faulty(new Problem(Code.UNREADABLE, Place.ofFile(reader.file),
                    "the table cannot be read: " + unreadable.getMessage(), "a text file in UTF-8"));
        }
    }

    private Checked<List<Recorded>> table(List<String> lines) {
        List<Recorded> runs = new ArrayList<>();
        for (String text : lines) {
            line++;
            List<String> cells = cells(text.startsWith("\ufeff") ? text.substring(1) : text);
            if (cells.stream().allMatch(String::isEmpty)) {
                continue;
            }
            if (heads.isEmpty()) {
                heads = cells.stream().map(cell -> cell.toLowerCase(Locale.ROOT)).toList();
                COLUMNS.stream().filter(name -> !heads.contains(name)).forEach(name -> problems.add(Code.MISSING,
                        new Place(file, line, ""), "there is no column \"" + name + "\"",
                        "a first line that names " + String.join(", ", COLUMNS)));
            } else if (problems.isEmpty() || heads.containsAll(COLUMNS)) {
                run(cells).ifPresent(runs::add);
            }
        }
        if (heads.isEmpty()) {
            problems.add(Code.MISSING, Place.ofFile(file), "the table is empty",
                    "a first line that names " + String.join(", ", COLUMNS));
        }
        return problems.or(() -> runs);
    }

    private static List<String> cells(String text) {
        String parting = text.indexOf(';') >= 0 ? ";" : ",";
        return Arrays.stream(text.split(parting, -1)).map(String::strip)
                .map(cell -> cell.length() > 1 && cell.startsWith("\"") && cell.endsWith("\"")
                        ? cell.substring(1, cell.length() - 1)
                        : cell)
                .toList();
    }

    private Optional<Recorded> run(List<String> cells) {
        if (cells.size() != heads.size()) {
            problems.add(Code.WRONG_TYPE, new Place(file, line, ""), cells.size() + " cells",
                    heads.size() + ", as many as the first line has");
            return Optional.empty();
        }
        Optional<SiteKind> kind = constant(cells, "kind", SiteKind.class);
        Optional<Side> side = constant(cells, "side", Side.class);
        Optional<LocalDate> from = day(cells, "from");
        Optional<LocalDate> until = day(cells, "until");
        String ended = cell(cells, "ended");
        if (!ENDS.contains(ended)) {
            problems.add(new Problem(Code.NOT_ALLOWED, place("ended"), "found \"" + ended + "\"",
                    Problem.oneOf(ended, ENDS)));
            return Optional.empty();
        }
        if (kind.isEmpty() || side.isEmpty() || from.isEmpty() || until.isEmpty()) {
            return Optional.empty();
        }
        if (!until.get().isAfter(from.get())) {
            problems.add(Code.WRONG_ORDER, place("until"), "a run from " + from.get() + " until " + until.get(),
                    "a day after the first");
            return Optional.empty();
        }
        double months = ChronoUnit.DAYS.between(from.get(), until.get()) / DAYS_OF_A_MONTH;
        return Optional.of(new Recorded(side.get(),
                new Run(kind.get(), months, ended.equals("stopped"), place("until"))));
    }

    private String cell(List<String> cells, String column) {
        return cells.get(heads.indexOf(column));
    }

    private Place place(String column) {
        return new Place(file, line, "column " + (heads.indexOf(column) + 1) + ", " + column);
    }

    private <E extends Enum<E>> Optional<E> constant(List<String> cells, String column, Class<E> type) {
        String text = cell(cells, column);
        Optional<E> found = Fields.constantOf(text, type);
        if (found.isEmpty()) {
            problems.add(new Problem(Code.NOT_ALLOWED, place(column), "found \"" + text + "\"",
                    Problem.oneOf(text, Arrays.stream(type.getEnumConstants())
                            .map(constant -> constant.name().toLowerCase(Locale.ROOT)).toList())));
        }
        return found;
    }

    private Optional<LocalDate> day(List<String> cells, String column) {
        String text = cell(cells, column);
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException noDay) {
            problems.add(Code.WRONG_TYPE, place(column), "found \"" + text + "\"", "a day, such as 2026-05-14");
            return Optional.empty();
        }
    }
}

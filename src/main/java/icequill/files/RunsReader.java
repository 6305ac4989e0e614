package icequill.files;

import icequill.forecast.Run;
import icequill.party.SiteKind;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a table of runs: from a cleaning or brushing to the stop that dirt brought about, or to the next cleaning without one, or
 * to a day on which the machine still ran. The names of its columns stand in the first line; others beside them are nobody's concern here.
 */
public final class RunsReader {

    private static final Set<String> COLUMNS = Set.of("machine", "kind", "side", "from", "until", "ended");
    private static final List<String> ENDS = List.of("stopped", "cleaned", "running");
    private static final double DAYS_OF_A_MONTH = 365.25 / 12;
    private static final int MOST_BYTES = 5_000_000;

    private final Problems problems = new Problems();

    /** The side of a machine that dirt settles on. */
    public enum Side {
        CONDENSER, WATER
    }

    /** A run of one side. */
    public record Recorded(Side side, Run run) {}

    /** All runs of a table, or everything that is wrong with it, each with its line and column. */
    public static Checked<List<Recorded>> read(Path file) {
        RunsReader reader = new RunsReader();
        List<CsvFile.Row> rows = CsvFile.read(file, Set.of(), COLUMNS, MOST_BYTES, reader.problems);
        List<Recorded> runs = reader.problems.isEmpty()
                ? rows.stream().flatMap(row -> reader.run(row).stream()).toList()
                : List.of();
        return reader.problems.or(() -> runs);
    }

    private Optional<Recorded> run(CsvFile.Row row) {
        Optional<SiteKind> kind = constant(row, "kind", SiteKind.class);
        Optional<Side> side = constant(row, "side", Side.class);
        Optional<LocalDate> from = day(row, "from");
        Optional<LocalDate> until = day(row, "until");
        String ended = row.cell("ended").orElse("");
        if (!ENDS.contains(ended)) {
            problems.add(new Problem(Code.NOT_ALLOWED, row.place("ended"), "found \"" + ended + "\"",
                    Problem.oneOf(ended, ENDS)));
            return Optional.empty();
        }
        if (kind.isEmpty() || side.isEmpty() || from.isEmpty() || until.isEmpty()) {
            return Optional.empty();
        }
        if (!until.get().isAfter(from.get())) {
            problems.add(Code.WRONG_ORDER, row.place("until"), "a run from " + from.get() + " until " + until.get(),
                    "a day after the first");
            return Optional.empty();
        }
        double months = ChronoUnit.DAYS.between(from.get(), until.get()) / DAYS_OF_A_MONTH;
        return Optional.of(new Recorded(side.get(),
                new Run(kind.get(), months, ended.equals("stopped"), row.place("until"))));
    }

    private <E extends Enum<E>> Optional<E> constant(CsvFile.Row row, String column, Class<E> type) {
        String text = row.cell(column).orElse("");
        Optional<E> found = Fields.constantOf(text, type);
        if (found.isEmpty()) {
            problems.add(new Problem(Code.NOT_ALLOWED, row.place(column), "found \"" + text + "\"",
                    Problem.oneOf(text, Arrays.stream(type.getEnumConstants())
                            .map(constant -> constant.name().toLowerCase(Locale.ROOT)).toList())));
        }
        return found;
    }

    private Optional<LocalDate> day(CsvFile.Row row, String column) {
        String text = row.cell(column).orElse("");
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException noDay) {
            problems.add(Code.WRONG_TYPE, row.place(column), "found \"" + text + "\"", "a day, such as 2026-05-14");
            return Optional.empty();
        }
    }
}

package icequill.files.form;

import icequill.explain.ConstantKey;
import icequill.files.disk.CsvFile;
import icequill.files.yaml.Fields;
import icequill.forecast.fit.DatedRun.Days;
import icequill.forecast.fit.Side;
import icequill.forecast.inputs.RecordedRun;
import icequill.forecast.inputs.SiteFactors;
import icequill.party.SiteKind;
import icequill.party.SiteKinds;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Reads a table of runs: from a cleaning or brushing to the stop that dirt brought about, or to the next cleaning without one, or
 * to a day on which the machine still ran. The names of its columns stand in the first line; others beside them are nobody's concern here.
 */
public final class RunsReader {

    private static final Set<String> COLUMNS = Set.of("machine", "kind", "side", "from", "until", "ended");
    private static final int MOST_BYTES = 5_000_000;
    private static final Pattern MONTH = Pattern.compile("[0-9]{4}-[0-9]{2}");

    private final SiteKinds kinds;
    private final Problems problems = new Problems();

    private RunsReader(SiteKinds kinds) {
        this.kinds = kinds;
    }

    /** All runs of a table, or everything that is wrong with it, each with its line and column. */
    public static Validated<List<RecordedRun>> read(Path file, SiteKinds kinds) {
        RunsReader reader = new RunsReader(kinds);
        return reader.runs(CsvFile.read(file, Set.of(), COLUMNS, MOST_BYTES, reader.problems));
    }

    /** The same of a table that was typed. */
    public static Validated<List<RecordedRun>> read(String text, String name, SiteKinds kinds) {
        RunsReader reader = new RunsReader(kinds);
        return reader.runs(CsvFile.read(text, name, Set.of(), COLUMNS, reader.problems));
    }

    private Validated<List<RecordedRun>> runs(List<CsvFile.Row> rows) {
        List<RecordedRun> runs = problems.isEmpty()
                ? rows.stream().flatMap(row -> run(row).stream()).toList()
                : List.of();
        return problems.or(() -> runs);
    }

    private Optional<RecordedRun> run(CsvFile.Row row) {
        int before = problems.count();
        Optional<SiteKind> kind = problems.take(kinds.named(row.cell("kind").orElse(""), row.place("kind")));
        Optional<Side> side = constant(row, "side", Side.class);
        Optional<Days> from = row.cell("from").flatMap(text -> days(row, "from", text));
        Optional<Days> until = days(row, "until", row.cell("until").orElse(""));
        Optional<LocalDate> watched = row.cell("watched").flatMap(text -> days(row, "watched", text))
                .map(Days::first);
        Optional<RecordedRun.End> end = constant(row, "ended", RecordedRun.End.class);
        Set<SiteFactors.Kind> worse = worse(row);
        if (problems.count() > before) {
            return Optional.empty();
        }
        from.ifPresent(begun -> check(row, begun, until.orElseThrow(), watched));
        return Optional
                .of(new RecordedRun(row.cell("machine").orElse(""), kind.orElseThrow(), worse, side.orElseThrow(),
                        from, until.orElseThrow(), watched, end.orElseThrow(), row.place("until")));
    }

    private void check(CsvFile.Row row, Days from, Days until, Optional<LocalDate> watched) {
        if (!until.last().isAfter(from.first())) {
            problems.add(Code.WRONG_ORDER, row.place("until"), "a run from " + row.cell("from").orElse("") + " until "
                    + row.cell("until").orElse(""), "a day after the first");
        } else if (watched.filter(day -> day.isBefore(from.first()) || !day.isBefore(until.last())).isPresent()) {
            problems.add(Code.WRONG_ORDER, row.place("watched"), "watched from " + watched.orElseThrow() + " on",
                    "a day from " + from.first() + " on, before " + until.last());
        }
    }

    /** Words with blanks between them; none where the column is left out or empty. */
    private Set<SiteFactors.Kind> worse(CsvFile.Row row) {
        Set<SiteFactors.Kind> worse = new TreeSet<>();
        row.cell("worse").stream().flatMap(text -> Arrays.stream(text.split(" +"))).forEach(word -> {
            Optional<SiteFactors.Kind> found = Fields.constantOf(word, SiteFactors.Kind.class);
            found.ifPresent(worse::add);
            if (found.isEmpty()) {
                problems.add(wrong(row, "worse", word, SiteFactors.Kind.class));
            }
        });
        return worse;
    }

    private <E extends Enum<E>> Optional<E> constant(CsvFile.Row row, String column, Class<E> type) {
        String text = row.cell(column).orElse("");
        Optional<E> found = Fields.constantOf(text, type);
        if (found.isEmpty()) {
            problems.add(wrong(row, column, text, type));
        }
        return found;
    }

    private static <E extends Enum<E>> Problem wrong(CsvFile.Row row, String column, String text, Class<E> type) {
        return new Problem(Code.NOT_ALLOWED, row.place(column), "found \"" + text + "\"",
                Problem.oneOf(text, Arrays.stream(type.getEnumConstants())
                        .map(constant -> ConstantKey.of(constant)).toList()));
    }

    private Optional<Days> near(CsvFile.Row row, String column, Days days) {
        Optional<Problem> farOff = Fields.farOff(days.first(), row.place(column));
        farOff.ifPresent(problems::add);
        return farOff.isPresent() ? Optional.empty() : Optional.of(days);
    }

    private Optional<Days> days(CsvFile.Row row, String column, String text) {
        try {
            if (MONTH.matcher(text).matches()) {
                YearMonth month = YearMonth.parse(text);
                return near(row, column, new Days(month.atDay(1), month.atEndOfMonth()));
            }
            LocalDate day = LocalDate.parse(text);
            return near(row, column, new Days(day, day));
        } catch (DateTimeException noDay) {
            problems.add(Code.WRONG_TYPE, row.place(column), "found \"" + text + "\"",
                    "a day, such as 2026-05-14, or a month, such as 2026-05");
            return Optional.empty();
        }
    }
}

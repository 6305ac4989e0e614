package icequill.answer.minutes;

import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.files.answer.Sheet;
import icequill.forecast.Decimals;
import icequill.outlook.minutes.TaskProposal;
import icequill.outlook.minutes.Times;
import icequill.outlook.minutes.VisitTime;
import icequill.outlook.minutes.WorkedMinutes;
import icequill.render.words.Sentences;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What visits took against what was planned, with what it says of the minutes of tasks. */
public final class MinutesSheet implements Sheet {

    private static final double HUNDRED = 100;
    /** Of more tasks than these it is only said how many there are. */
    private static final int MOST_NAMED = 3;

    private final WorkedMinutes worked;
    private final Map<String, Integer> now;
    private final int otherWork;
    private final int notPlanned;
    private final Sentences sentences;

    /**
     * @param now attended minutes as the rates have them, by task
     * @param otherWork visits for which somebody called, on which something was repaired, or without a task
     * @param notPlanned visits for which nothing can be planned any more
     */
    public MinutesSheet(WorkedMinutes worked, Map<String, Integer> now, int otherWork, int notPlanned,
            Sentences sentences) {
        this.worked = worked;
        this.now = Map.copyOf(now);
        this.otherWork = otherWork;
        this.notPlanned = notPlanned;
        this.sentences = sentences;
    }

    /**
     * What JSON shows of it.
     *
     * @param visits that count
     * @param since the day of the first; missing where none counts
     * @param planned minutes of all people on them, and {@code worked}
     * @param all of a hundred minutes that were planned, how many were worked; missing where no visit counts
     * @param machines by their model, from visits on which all were of one; {@code people} by name, from visits that they did alone
     * @param settings lines for pricing/tasks.yaml
     */
    public record Data(int visits, Optional<LocalDate> since, int planned, int worked, Optional<OfHundred> all,
            List<Task> tasks, List<OfHundred> machines, List<OfHundred> people, LeftOut leftOut,
            List<String> settings) {

        public Data {
            tasks = List.copyOf(tasks);
            machines = List.copyOf(machines);
            people = List.copyOf(people);
            settings = List.copyOf(settings);
        }
    }

    /** Visits that say nothing; {@code farOff}: by id, those that took thrice as long as planned, or a third of it. */
    public record LeftOut(int otherWork, int notPlanned, List<String> farOff) {
        public LeftOut {
            farOff = List.copyOf(farOff);
        }
    }

    /**
     * Of a hundred minutes that were planned, how many were worked: the middle one of the visits.
     *
     * @param low and {@code high}: between them it lies nineteen times of twenty; missing where there are too few visits to say
     */
    public record OfHundred(String name, int visits, BigDecimal worked, Optional<BigDecimal> low,
            Optional<BigDecimal> high) {
        private static OfHundred of(String name, Times times) {
            return new OfHundred(name, times.visits(), hundred(times.times()),
                    times.sure().map(limits -> hundred(limits.low())),
                    times.sure().map(limits -> hundred(limits.high())));
        }

        private static BigDecimal hundred(double times) {
            return Decimals.of(HUNDRED * times, 0);
        }
    }

    /**
     * Attended minutes of a task.
     *
     * @param together tasks that were never done without it, and are taken to be off alike
     */
    public record Task(String task, int visits, int now, BigDecimal seen, Optional<BigDecimal> low,
            Optional<BigDecimal> high, int proposed, String why, List<String> together) {

        public Task {
            together = List.copyOf(together);
        }

        private static Task of(TaskProposal found) {
            return new Task(found.task(), found.visits(), found.now(), found.seen(), found.low(), found.high(),
                    found.proposed(), ConstantKey.of(found.why()), found.together());
        }
    }

    @Override
    public Data data() {
        List<VisitTime> counted = worked.counted();
        List<TaskProposal> proposals = worked.proposals(now);
        return new Data(counted.size(), counted.stream().map(VisitTime::day).min(Comparator.naturalOrder()),
                counted.stream().mapToInt(VisitTime::planned).sum(), counted.stream().mapToInt(VisitTime::worked).sum(),
                worked.all().map(times -> OfHundred.of("", times)), proposals.stream().map(Task::of).toList(),
                rows(worked.byMachine()), rows(worked.byPerson()),
                new LeftOut(otherWork, notPlanned, worked.farOff().stream().map(VisitTime::visit).toList()),
                proposals.stream().filter(TaskProposal::isChange).flatMap(MinutesSheet::setting).toList());
    }

    private static List<OfHundred> rows(Map<String, Times> times) {
        return times.entrySet().stream().map(row -> OfHundred.of(row.getKey(), row.getValue())).toList();
    }

    private static Stream<String> setting(TaskProposal found) {
        return Stream.of("- id: " + found.task(),
                "  attended: " + found.proposed() + "   # was " + found.now() + "; from " + found.visits() + " visits");
    }

    /** What stands above the tables. */
    public List<String> lead() {
        Data data = data();
        List<String> lead = new ArrayList<>();
        data.since().ifPresentOrElse(since -> lead.add(said("minutes.lead", Fact.number(data.visits(), "visit"),
                new Fact.Day(since), Fact.number(data.planned(), ""), Fact.number(data.worked(), ""))),
                () -> lead.add(said("minutes.none")));
        LeftOut left = data.leftOut();
        lead.add(said("minutes.left-out", Fact.number(left.otherWork(), ""), Fact.number(left.notPlanned(), ""),
                Fact.number(left.farOff().size(), "")));
        if (data.visits() < Times.FEWEST) {
            lead.add(said("minutes.too-few", Fact.number(Times.FEWEST, "visit")));
        }
        return lead;
    }

    private String said(String key, Fact... facts) {
        return Sentences.capitalized(sentences.say(Phrase.of(key, facts)));
    }

    /** Above the tables of {@link #tasks}. */
    public List<String> taskHeads() {
        return words("minutes.task", "minutes.why", "minutes.visits", "minutes.now", "minutes.seen", "minutes.sure",
                "minutes.proposed");
    }

    /** A row for each task. */
    public List<List<String>> tasks() {
        return data().tasks().stream().map(row -> List.of(row.task(), why(row), String.valueOf(row.visits()),
                String.valueOf(row.now()), number(row.seen()), limits(row.low(), row.high()),
                String.valueOf(row.proposed()))).toList();
    }

    private String why(Task row) {
        String why = sentences.word("minutes.why." + row.why());
        List<String> others = row.together();
        return others.isEmpty()
                ? why
                : why + "; " + (others.size() > MOST_NAMED
                        ? sentences.word("minutes.together-many", String.valueOf(others.size()))
                        : sentences.word("minutes.together", String.join(", ", others)));
    }

    /** Above the tables of machines and people. */
    public List<String> heads() {
        return Stream.concat(Stream.of(""), words("minutes.visits", "minutes.of-hundred", "minutes.sure").stream())
                .toList();
    }

    public List<List<String>> machines() {
        return cells(data().machines());
    }

    public List<List<String>> people() {
        return cells(data().people());
    }

    private List<List<String>> cells(List<OfHundred> rows) {
        return rows.stream().map(row -> List.of(row.name(), String.valueOf(row.visits()), number(row.worked()),
                limits(row.low(), row.high()))).toList();
    }

    private String limits(Optional<BigDecimal> low, Optional<BigDecimal> high) {
        return low.map(from -> sentences.word("minutes.limits", number(from), number(high.orElseThrow()))).orElse("");
    }

    private String number(BigDecimal value) {
        return sentences.formats().number(value);
    }

    private List<String> words(String... keys) {
        return Stream.of(keys).map(sentences::word).toList();
    }

    /** A word of this sheet. */
    public String title(String part) {
        return sentences.word("minutes." + part);
    }

    /** The lines for the shop's file, or that there are none. */
    public List<String> settings() {
        List<String> lines = data().settings();
        return lines.isEmpty()
                ? List.of(sentences.word("minutes.settings-stay"))
                : Stream.concat(Stream.of(sentences.word("minutes.settings")), lines.stream()).toList();
    }
}

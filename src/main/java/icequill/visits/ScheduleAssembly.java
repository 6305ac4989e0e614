package icequill.visits;

import icequill.document.Schedule;
import icequill.document.WorkSheet;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Language;
import icequill.planner.Progress;
import icequill.planner.Timetable;
import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import icequill.work.Procedure;
import icequill.work.Task;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Tells technicians a timetable: when each step is done, and when the alarms ring.
 *
 * @param known what is to be said first
 * @param people names, by their numbers in the timetable
 * @param from the minute of the visit from which on it was planned; 0 for one to come
 */
public record ScheduleAssembly(VisitContext hand, Timetable table, List<String> people, int from,
        List<Phrase> known, Language language) {

    public static ScheduleAssembly of(Stop stop, Language language) {
        TimetableRequest planning = stop.planning();
        return new ScheduleAssembly(planning.hand(), stop.table(), planning.people(),
                planning.progress().map(Progress::now).orElse(0), stop.remarks(), language);
    }

    public Schedule schedule() {
        return new Schedule(hand.visit().began(), table.minutes(), table.bound(), table.walking(), people,
                waits().map(this::alarm).sorted(Comparator.comparing(Schedule.Alarm::rings)).toList(),
                Stream.of(known.stream(), late(), new Overruns(hand, table, people, from).phrases().stream())
                        .flatMap(Function.identity()).toList());
    }

    /** What circulates for too long, now that it did not go as planned. */
    private Stream<Phrase> late() {
        return waits().flatMap(wait -> latest(wait).filter(moment(wait.end())::isAfter)
                .map(limit -> Phrase.of("remark.flush-late",
                        new Fact.Text(hand.site().machine(wait.machine()).orElseThrow().where()),
                        new Fact.Time(limit.toLocalTime()), new Fact.Time(moment(wait.end()).toLocalTime())))
                .stream());
    }

    /** When a task at a machine is done. */
    public WorkSheet.Turn turn(String machine, Task task) {
        List<Entry> entries = at(machine).filter(entry -> isOf(entry, task)).toList();
        Entry done = entries.stream().filter(entry -> entry.kind() == Kind.TASK).findFirst().orElseThrow();
        int until = entries.stream().mapToInt(Entry::end).max().orElseThrow();
        return new WorkSheet.Turn(done.start(), done.end(), until, done.people());
    }

    private static boolean isOf(Entry entry, Task task) {
        return entry.order() == task.order() && entry.task().equals(VisitWorkAssembly.name(task));
    }

    private Stream<Entry> at(String machine) {
        return table.entries().stream().filter(entry -> entry.machine().equals(machine));
    }

    private Stream<Entry> waits() {
        return table.entries().stream().filter(entry -> entry.kind() == Kind.WAIT && entry.end() >= from);
    }

    private Schedule.Alarm alarm(Entry wait) {
        Optional<Entry> next = at(wait.machine()).filter(entry -> entry.kind() == Kind.TASK)
                .filter(entry -> entry.start() >= wait.end()).min(Comparator.comparingInt(Entry::start));
        Optional<ZonedDateTime> latest = latest(wait);
        return new Schedule.Alarm(rings(wait, latest), latest,
                hand.site().machine(wait.machine()).orElseThrow(), name(wait),
                next.map(entry -> new Schedule.Next(name(entry), moment(entry.start()), entry.people(),
                        entry.spare())));
    }

    /** When the wait is over, but soon enough to walk there before a chemical must be out, wherever on the visit somebody is. */
    private ZonedDateTime rings(Entry wait, Optional<ZonedDateTime> latest) {
        ZonedDateTime over = moment(wait.end());
        int walk = VisitWorkAssembly.of(hand).walks().farthest(wait.machine());
        return latest.map(limit -> limit.minusMinutes(walk)).filter(limit -> limit.isBefore(over)).orElse(over);
    }

    /** A cleaner's time runs from the start of pouring. */
    private Optional<ZonedDateTime> latest(Entry wait) {
        Task task = task(wait);
        return VisitWorkAssembly.timer(hand.site(), task, wait.machine()).map(Procedure.Timer::most)
                .map(most -> moment(turn(wait.machine(), task).start() + most));
    }

    private ZonedDateTime moment(int minute) {
        return hand.visit().began().plusMinutes(minute);
    }

    private String name(Entry entry) {
        return task(entry).name().in(language);
    }

    private Task task(Entry entry) {
        return hand.visit().findings().stream().filter(finding -> finding.machine().equals(entry.machine()))
                .flatMap(finding -> finding.tasks().stream())
                .flatMap(done -> hand.rates().task(done.task()).stream()).filter(task -> isOf(entry, task)).findFirst()
                .orElseThrow();
    }
}

package icequill.answer;

import icequill.document.Schedule;
import icequill.explain.ConstantKey;
import icequill.files.answer.Sheet;
import icequill.files.disk.SafeFile;
import icequill.party.Language;
import icequill.planner.Timetable;
import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.visits.DayPlan;
import icequill.visits.ScheduleAssembly;
import icequill.visits.Stop;
import icequill.visits.TimetableRequest;
import icequill.visits.VisitWorkAssembly;
import icequill.visits.WorkDays;
import icequill.work.MachineState;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The timetable of a visit as texts, as JSON, and as alarms for a phone. */
public final class TimetableSheet implements Sheet {

    private static final int COLUMNS = 60;
    private static final char WAITING = '.';

    private final Timetable table;
    private final List<String> people;
    private final Alarms alarms;
    private final List<String> remarks;
    private final Optional<TimetableSheet> next;

    /**
     * A timetable.
     *
     * @param people names, by their numbers in the timetable
     * @param remarks where it needs more time than there is, and what else must be known
     * @param next that of the next visit of the day, or of the next day of the visit
     */
    TimetableSheet(Timetable table, List<String> people, Alarms alarms, List<String> remarks,
            Optional<TimetableSheet> next) {
        this.table = table;
        this.people = List.copyOf(people);
        this.alarms = alarms;
        this.remarks = List.copyOf(remarks);
        this.next = next;
    }

    /** The timetable of a visit, or those of the days that it takes, with alarms in a language. */
    public static Validated<TimetableSheet> of(TimetableRequest planning, Language language) {
        return new WorkDays(planning).stops().map(stops -> of(stops, language));
    }

    /** The timetables of two visits of a day, their alarms in a language. */
    public static Validated<TimetableSheet> of(DayPlan day, Language language) {
        return day.stops().map(stops -> of(stops, language));
    }

    private static TimetableSheet of(List<Stop> stops, Language language) {
        return of(stops.getFirst(), language, stops.size() == 1
                ? Optional.empty()
                : Optional.of(of(stops.subList(1, stops.size()), language)));
    }

    private static TimetableSheet of(Stop stop, Language language, Optional<TimetableSheet> next) {
        TimetableRequest planning = stop.planning();
        Schedule schedule = ScheduleAssembly.of(stop, language).schedule();
        Sentences sentences = Sentences.of(Language.ENGLISH, planning.hand().shop().address().country());
        return new TimetableSheet(stop.table(), planning.people(), new Alarms(stop.name(), schedule),
                schedule.remarks().stream().map(sentences::say).toList(), next);
    }

    /** That of the next visit of the day, or of the next day of the visit; empty where it is the last. */
    public Optional<TimetableSheet> next() {
        return next;
    }

    /** Which visit it is of, and when that begins. */
    public String title() {
        return alarms.visit() + ", " + alarms.schedule().begins().toLocalTime();
    }

    private List<Alarms> allAlarms() {
        List<Alarms> all = new ArrayList<>(List.of(alarms));
        next.ifPresent(sheet -> all.addAll(sheet.allAlarms()));
        return all;
    }

    /** Writes the alarms into a file (iCalendar), in place of an earlier one. */
    public Validated<Path> writeAlarms(Path file) {
        return SafeFile.write(file, Alarms.calendar(allAlarms()), true);
    }

    /** One row a machine: who is at it, by letter, and dots while it works by itself; each column stands for some minutes. */
    public List<List<String>> chart() {
        int step = Math.max(1, Math.ceilDiv(table.minutes(), COLUMNS));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", ruler(step)));
        table.entries().stream().map(Entry::machine).distinct().sorted()
                .forEach(machine -> rows.add(List.of(machine, row(machine, step))));
        return rows;
    }

    private String ruler(int step) {
        StringBuilder ruler = new StringBuilder();
        for (int column = 0; column * step < table.minutes(); column += 10) {
            String mark = String.valueOf(column * step);
            ruler.append(mark).append(" ".repeat(10 - mark.length()));
        }
        return ruler.toString().stripTrailing();
    }

    private String row(String machine, int step) {
        StringBuilder row = new StringBuilder();
        for (int from = 0; from < table.minutes(); from += step) {
            row.append(mark(machine, from, from + step));
        }
        return row.toString().stripTrailing();
    }

    private char mark(String machine, int from, int until) {
        char mark = ' ';
        for (Entry entry : table.entries()) {
            if (entry.kind() != Kind.BREAK && entry.machine().equals(machine) && entry.start() < until
                    && entry.end() > from) {
                if (!entry.people().isEmpty()) {
                    return letter(entry.people().getFirst());
                }
                mark = WAITING;
            }
        }
        return mark;
    }

    /** The heads of the table's columns. */
    public List<String> head() {
        return List.of("machine", "task", "state", "who", "start", "end");
    }

    /** One row for each task and wait, as many cells as the head has. */
    public List<List<String>> rows() {
        return table.entries().stream().map(entry -> List.of(entry.machine(), name(entry), state(entry),
                entry.people().stream().map(person -> String.valueOf(letter(person))).collect(Collectors.joining("+")),
                String.valueOf(entry.start()), String.valueOf(entry.end()))).toList();
    }

    /** Who the letters are, how long it takes, and whether that is proven. */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        for (int person = 0; person < people.size(); person++) {
            notes.add(letter(person) + " = " + people.get(person));
        }
        notes.add(table.minutes() + " minutes, " + table.walking() + " of walking; " + (table.proven()
                ? "proven: no timetable is shorter"
                : "none is shorter than " + table.bound() + ", so at most " + table.gap() + " could be saved"));
        notes.addAll(remarks);
        return notes;
    }

    /**
     * What JSON shows of it; minutes count from the beginning of the visit.
     *
     * @param minutes until everything is done, waits included
     * @param isProven whether no timetable is shorter
     * @param bound minutes below which none can be
     * @param walking minutes of all people together
     * @param overstays those who stay longer than they may
     * @param remarks where it needs more time than there is, and what else must be known
     * @param next that of the next visit of the day, or of the next day of the visit
     */
    public record Data(int minutes, boolean isProven, int bound, int walking, List<Overstay> overstays,
            List<String> remarks, List<Task> tasks, Optional<Data> next) {}

    /**
     * Somebody who must leave before all is done that he is needed for.
     *
     * @param person by name
     * @param minutes by which he stays longer
     */
    public record Overstay(String person, int minutes) {}

    /**
     * A task, the wait after it, or a break.
     *
     * @param people by name; none for a wait
     * @param start and {@code end}: minutes
     * @param spare minutes by which it may begin later
     */
    public record Task(String machine, String task, MachineState state, List<String> people, int start, int end,
            int spare) {}

    @Override
    public Data data() {
        return new Data(table.minutes(), table.proven(), table.bound(), table.walking(),
                table.overstays().stream().map(each -> new Overstay(people.get(each.person()), each.minutes()))
                        .toList(),
                remarks,
                table.entries().stream().map(entry -> new Task(entry.machine(), name(entry), entry.state(),
                        entry.people().stream().map(people::get).toList(), entry.start(), entry.end(), entry.spare()))
                        .toList(),
                next.map(TimetableSheet::data));
    }

    private static String name(Entry entry) {
        return entry.kind() != Kind.WAIT
                ? entry.task()
                : entry.task().equals(VisitWorkAssembly.POUR) ? "circulate" : entry.task() + "-wait";
    }

    private static String state(Entry entry) {
        return ConstantKey.of(entry.state());
    }

    private static char letter(int person) {
        return (char) ('A' + person);
    }
}

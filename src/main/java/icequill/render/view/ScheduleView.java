package icequill.render.view;

import icequill.document.Schedule;
import icequill.document.WorkSheet.Job;
import icequill.document.WorkSheet.Step;
import icequill.document.WorkSheet.Turn;
import icequill.render.drawing.HatchPattern;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The timetable of a work sheet as texts and as measures of a drawing, ready for {@code parts/timetable.ftlh}. */
record ScheduleView(Schedule schedule, List<Job> jobs, Sentences sentences) {

    /** Tenths of a millimeter across the page. */
    private static final int WIDTH = 1700;
    private static final int TOP = 4;
    private static final int HEIGHT = 48;
    /** No letter fits into a narrower box. */
    private static final int LETTER = 34;
    private static final int PLATE_MARGIN = 8;
    private static final int MOST_TICKS = 8;
    private static final List<Integer> TICKS = List.of(5, 10, 15, 30, 60, 120, 240);

    /** Who somebody is in the timetable. */
    static String letter(int person) {
        return String.valueOf((char) ('A' + person));
    }

    /** Several people, as in {@code A + B}; a dash for nobody. */
    static String letters(List<Integer> people) {
        return people.isEmpty() ? "–" : people.stream().map(ScheduleView::letter).collect(Collectors.joining(" + "));
    }

    /**
     * The timetable.
     *
     * @param rows the machines
     * @param spare whether any alarm leaves time to spare
     */
    record Timetable(List<String> notes, List<Person> people, List<Tick> ticks, List<Row> rows, List<Alarm> alarms,
            boolean spare)
            implements
            Texts {}

    /** @param hatch steps of a path that fills a box; empty for none */
    record Person(String letter, String name, String hatch) implements Texts {}

    record Tick(String x, String text, String anchor) implements Texts {}

    /** @param alt the row for those who cannot see it */
    record Row(String name, String alt, List<Box> boxes, List<Wait> waits, List<Ring> rings) implements Texts {}

    /**
     * Somebody at work.
     *
     * @param letter who; empty where there is no room for it
     * @param plate how wide the white is below the letter
     */
    record Box(String x, String width, String hatch, String middle, String letter, String plate, String plateX)
            implements
            Texts {}

    record Wait(String from, String until) implements Texts {}

    /** @param beside where its number stands */
    record Ring(String points, String beside, String anchor, String number) implements Texts {}

    record Alarm(String number, String at, String machine, String waited, String next, String latest, String who,
            String spare)
            implements
            Texts {}

    Timetable timetable() {
        return new Timetable(notes(), IntStream.range(0, schedule.people().size()).mapToObj(this::person).toList(),
                ticks(), jobs.stream().filter(job -> !job.isRepair()).map(this::row).toList(),
                IntStream.range(0, schedule.alarms().size()).mapToObj(this::alarm).toList(),
                schedule.alarms().stream().flatMap(alarm -> alarm.next().stream()).anyMatch(next -> next.spare() > 0));
    }

    /** When a step is done, as in {@code 9:05 – 9:15 AM}. */
    String times(Turn turn) {
        return sentences.formats().span(schedule.at(turn.start()).toLocalTime(),
                schedule.at(turn.over()).toLocalTime());
    }

    private String time(ZonedDateTime moment) {
        return sentences.formats().time(moment.toLocalTime());
    }

    private List<String> notes() {
        String minutes = String.valueOf(schedule.minutes());
        String end = time(schedule.at(schedule.minutes()));
        int gap = schedule.minutes() - schedule.bound();
        List<String> notes = new ArrayList<>();
        notes.add(schedule.walking() == 0
                ? sentences.word("timetable.length", minutes, end)
                : sentences.word("timetable.length-walking", minutes, end, String.valueOf(schedule.walking())));
        if (gap > 0) {
            notes.add(sentences.word("timetable.bound", String.valueOf(gap)));
        }
        notes.add(sentences.word("timetable.slips"));
        schedule.remarks().forEach(remark -> notes.add(sentences.say(remark)));
        return List.copyOf(notes);
    }

    private Person person(int number) {
        return new Person(letter(number), schedule.people().get(number), HatchPattern.path(number, 2, 2, 96, 36));
    }

    private int across(int minute) {
        return schedule.minutes() == 0 ? 0 : minute * WIDTH / schedule.minutes();
    }

    /** At round times of day, few enough to be read. */
    private List<Tick> ticks() {
        int step = TICKS.stream().filter(each -> schedule.minutes() / each <= MOST_TICKS).findFirst()
                .orElse(TICKS.getLast());
        int first = Math.floorMod(-schedule.begins().toLocalTime().toSecondOfDay() / 60, step);
        return IntStream.iterate(first, minute -> minute <= schedule.minutes(), minute -> minute + step)
                .mapToObj(minute -> new Tick(String.valueOf(across(minute)), time(schedule.at(minute)),
                        anchor(across(minute))))
                .toList();
    }

    /** Texts at the edges must not run out of the drawing. */
    private static String anchor(int x) {
        int edge = WIDTH / 12;
        return x < edge ? "start" : x > WIDTH - edge ? "end" : "middle";
    }

    private Row row(Job job) {
        List<Turn> turns = job.steps().stream().flatMap(step -> step.turn().stream()).toList();
        return new Row(new MachineName(job.machine(), sentences).text(), spoken(job),
                turns.stream().filter(turn -> turn.over() > turn.start()).map(this::box).toList(),
                turns.stream().filter(turn -> turn.until() > turn.over()).map(this::line).toList(), rings(job));
    }

    private Box box(Turn turn) {
        int x = across(turn.start());
        int width = Math.max(1, across(turn.over()) - x);
        String hatch = turn.people().isEmpty()
                ? ""
                : HatchPattern.path(turn.people().getFirst(), x, TOP, width, HEIGHT);
        int middle = x + width / 2;
        int plate = LETTER * Math.max(1, turn.people().size()) - PLATE_MARGIN;
        String letters = width < LETTER * turn.people().size()
                ? ""
                : turn.people().stream().map(ScheduleView::letter).collect(Collectors.joining("+"));
        return new Box(String.valueOf(x), String.valueOf(width), hatch, String.valueOf(middle), letters,
                String.valueOf(plate), String.valueOf(middle - plate / 2));
    }

    private Wait line(Turn turn) {
        return new Wait(String.valueOf(across(turn.over())), String.valueOf(across(turn.until())));
    }

    private List<Ring> rings(Job job) {
        List<Ring> rings = new ArrayList<>();
        for (int i = 0; i < schedule.alarms().size(); i++) {
            Schedule.Alarm alarm = schedule.alarms().get(i);
            if (alarm.machine().id().equals(job.machine().id())) {
                int x = across(Math.toIntExact(
                        Duration.between(schedule.begins(), alarm.rings()).toMinutes()));
                boolean last = x > WIDTH - LETTER;
                rings.add(new Ring(x + ",57 " + (x - 9) + ",74 " + (x + 9) + ",74",
                        String.valueOf(last ? x - 14 : x + 14), last ? "end" : "start", String.valueOf(i + 1)));
            }
        }
        return List.copyOf(rings);
    }

    /** The row for those who cannot see it. */
    private String spoken(Job job) {
        return job.steps().stream().flatMap(step -> step.turn().stream().map(turn -> spoken(step, turn)))
                .collect(Collectors.joining("; "));
    }

    private String spoken(Step step, Turn turn) {
        return times(turn) + " " + step.name() + ", " + letters(turn.people());
    }

    /** With its time where it is not done at once. */
    private String next(Schedule.Alarm alarm, Schedule.Next next) {
        String step = Sentences.capitalized(next.step());
        return next.starts().isEqual(alarm.rings()) ? step : step + ", " + time(next.starts());
    }

    private Alarm alarm(int number) {
        Schedule.Alarm alarm = schedule.alarms().get(number);
        return new Alarm(String.valueOf(number + 1), time(alarm.rings()),
                Sentences.capitalized(alarm.machine().where()), Sentences.capitalized(alarm.waited()),
                alarm.next().map(next -> next(alarm, next)).orElse("–"), alarm.latest().map(this::time).orElse("–"),
                letters(alarm.next().map(Schedule.Next::people).orElse(List.of())),
                alarm.next().map(Schedule.Next::spare).map(String::valueOf).orElse("–"));
    }
}

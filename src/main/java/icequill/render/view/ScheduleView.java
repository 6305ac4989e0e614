package icequill.render.view;

import icequill.document.Schedule;
import icequill.document.WorkSheet.Job;
import icequill.document.WorkSheet.Step;
import icequill.document.WorkSheet.Turn;
import icequill.render.drawing.HatchPattern;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("notes", notes());
        model.put("people", IntStream.range(0, schedule.people().size()).mapToObj(this::person).toList());
        model.put("ticks", ticks());
        model.put("rows", jobs.stream().filter(job -> !job.isRepair()).map(this::row).toList());
        model.put("alarms", IntStream.range(0, schedule.alarms().size()).mapToObj(this::alarm).toList());
        model.put("spare", schedule.alarms().stream().flatMap(alarm -> alarm.next().stream())
                .anyMatch(next -> next.spare() > 0));
        return model;
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
        return notes;
    }

    private Map<String, String> person(int number) {
        return Map.of("letter", letter(number), "name", schedule.people().get(number), "hatch",
                HatchPattern.path(number, 2, 2, 96, 36));
    }

    private int across(int minute) {
        return schedule.minutes() == 0 ? 0 : minute * WIDTH / schedule.minutes();
    }

    /** At round times of day, few enough to be read. */
    private List<Map<String, String>> ticks() {
        int step = TICKS.stream().filter(each -> schedule.minutes() / each <= MOST_TICKS).findFirst()
                .orElse(TICKS.getLast());
        int first = Math.floorMod(-schedule.begins().toLocalTime().toSecondOfDay() / 60, step);
        return IntStream.iterate(first, minute -> minute <= schedule.minutes(), minute -> minute + step)
                .mapToObj(minute -> Map.of("x", String.valueOf(across(minute)), "text", time(schedule.at(minute)),
                        "anchor", anchor(across(minute))))
                .toList();
    }

    /** Texts at the edges must not run out of the drawing. */
    private static String anchor(int x) {
        int edge = WIDTH / 12;
        return x < edge ? "start" : x > WIDTH - edge ? "end" : "middle";
    }

    private Map<String, Object> row(Job job) {
        return Map.of("name", new MachineName(job.machine(), sentences).text(), "alt", spoken(job), "boxes",
                job.steps().stream().flatMap(step -> step.turn().stream()).filter(turn -> turn.over() > turn.start())
                        .map(this::box).toList(),
                "waits", job.steps().stream().flatMap(step -> step.turn().stream())
                        .filter(turn -> turn.until() > turn.over()).map(this::line).toList(),
                "rings", rings(job));
    }

    private Map<String, String> box(Turn turn) {
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
        return Map.of("x", String.valueOf(x), "width", String.valueOf(width), "hatch", hatch, "middle",
                String.valueOf(middle), "letter", letters, "plate", String.valueOf(plate), "plateX",
                String.valueOf(middle - plate / 2));
    }

    private Map<String, String> line(Turn turn) {
        return Map.of("from", String.valueOf(across(turn.over())), "until", String.valueOf(across(turn.until())));
    }

    private List<Map<String, String>> rings(Job job) {
        List<Map<String, String>> rings = new ArrayList<>();
        for (int i = 0; i < schedule.alarms().size(); i++) {
            Schedule.Alarm alarm = schedule.alarms().get(i);
            if (alarm.machine().id().equals(job.machine().id())) {
                int x = across(Math.toIntExact(
                        Duration.between(schedule.begins(), alarm.rings()).toMinutes()));
                boolean last = x > WIDTH - LETTER;
                rings.add(Map.of("points", x + ",57 " + (x - 9) + ",74 " + (x + 9) + ",74", "beside",
                        String.valueOf(last ? x - 14 : x + 14), "anchor", last ? "end" : "start", "number",
                        String.valueOf(i + 1)));
            }
        }
        return rings;
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

    private Map<String, String> alarm(int number) {
        Schedule.Alarm alarm = schedule.alarms().get(number);
        return Map.of("number", String.valueOf(number + 1), "at", time(alarm.rings()), "machine",
                Sentences.capitalized(alarm.machine().where()), "waited", Sentences.capitalized(alarm.waited()), "next",
                alarm.next().map(next -> next(alarm, next)).orElse("–"), "latest",
                alarm.latest().map(this::time).orElse("–"), "who",
                letters(alarm.next().map(Schedule.Next::people).orElse(List.of())), "spare",
                alarm.next().map(Schedule.Next::spare).map(String::valueOf).orElse("–"));
    }
}

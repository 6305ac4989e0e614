package icequill.visits;

import icequill.planner.Progress;
import icequill.planner.Timetable;
import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.TickedTimes;
import icequill.work.Task;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds how far a visit has come by what was ticked.
 *
 * @param planned when everything was to be done, and by whom
 */
record Ticks(TickedTimes asked, VisitContext hand, Timetable planned) {

    private static final Pattern TICK = Pattern.compile("\\s*(\\S+)\\s+([^\\s=]+)\\s*=\\s*(\\S+)\\s*");
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);
    private static final int LONGEST = 16 * 60;
    private static final Place PLACE = Place.ofFile("--done");

    Validated<Progress> progress() {
        Problems problems = new Problems();
        List<Progress.Done> ticked = new ArrayList<>();
        asked.done().forEach(tick -> done(tick, problems).ifPresent(each -> {
            if (ticked.stream().anyMatch(other -> isSame(other, each))) {
                problems.add(Code.DUPLICATE_NAME, PLACE, "\"" + tick + "\" is ticked a second time", "each task once");
            }
            ticked.add(each);
        }));
        ticked.forEach(each -> order(each, ticked, problems));
        Optional<Integer> from = asked.now().flatMap(text -> problems.take(minute(text, hand.visit().began())));
        return problems.or(() -> new Progress(
                from.orElse(ticked.stream().mapToInt(Progress.Done::over).max().orElse(0)),
                withThoseBefore(ticked)));
    }

    private static boolean isSame(Progress.Done one, Progress.Done other) {
        return one.machine().equals(other.machine()) && one.order() == other.order() && one.task().equals(other.task());
    }

    private static void order(Progress.Done done, List<Progress.Done> all, Problems problems) {
        all.stream().filter(other -> other.machine().equals(done.machine()) && other.order() < done.order()
                && other.over() > done.over())
                .forEach(other -> problems.add(Code.WRONG_ORDER, PLACE, "\"" + done.task() + "\" at \"" + done.machine()
                        + "\" is ticked as over before \"" + other.task() + "\", which comes before it",
                        "times in the order of the tasks"));
    }

    private Optional<Progress.Done> done(String tick, Problems problems) {
        Matcher parts = TICK.matcher(tick);
        if (!parts.matches()) {
            problems.add(Code.WRONG_TYPE, PLACE, "\"" + tick + "\" is no task with its time",
                    "machine, task, = and the time at which it was over, such as \"kitchen flush=10:42\"");
            return Optional.empty();
        }
        List<Entry> at = planned.entries().stream().filter(entry -> entry.kind() == Kind.TASK
                && entry.machine().equals(parts.group(1))).toList();
        if (at.isEmpty()) {
            problems.add(Problem.unknownName(PLACE, "machine", parts.group(1), planned.entries().stream()
                    .map(Entry::machine).distinct().toList()));
            return Optional.empty();
        }
        Optional<Entry> entry = at.stream().filter(each -> isMeant(each, parts.group(2))).findFirst();
        if (entry.isEmpty()) {
            problems.add(Problem.unknownName(PLACE, "task", parts.group(2),
                    at.stream().map(Entry::task).distinct().toList()));
        }
        Optional<Integer> over = problems.take(minute(parts.group(3), hand.visit().began()));
        return entry.flatMap(task -> over.map(minute -> done(task, minute)));
    }

    /** As the timetable calls it, or as the rates do. */
    private boolean isMeant(Entry entry, String name) {
        Optional<Task> task = hand.rates().task(name);
        return entry.task().equals(name)
                || task.filter(found -> VisitWorkAssembly.name(found).equals(entry.task())
                        && found.order() == entry.order()).isPresent();
    }

    private static Progress.Done done(Entry entry, int over) {
        return new Progress.Done(entry.machine(), entry.order(), entry.task(), over, entry.people());
    }

    private static Validated<Integer> minute(String text, ZonedDateTime began) {
        try {
            ZonedDateTime sameDay = began.with(LocalTime.parse(text, CLOCK));
            ZonedDateTime moment = sameDay.isBefore(began) ? sameDay.plusDays(1) : sameDay;
            int minute = Math.toIntExact(Duration.between(began, moment).toMinutes());
            return minute <= LONGEST
                    ? Validated.valid(minute)
                    : Validated.invalid(new Problem(Code.OUT_OF_RANGE, PLACE,
                            text + " is before the visit, which begins at " + began.toLocalTime(),
                            "a time from " + began.toLocalTime() + " on"));
        } catch (DateTimeException noTime) {
            return Validated.invalid(new Problem(Code.WRONG_TYPE, PLACE, "\"" + text + "\" is no time of day",
                    "hours and minutes from 00:00 to 23:59, such as 10:42"));
        }
    }

    /** What comes before a task at its machine is over too: when it was planned, unless the next was begun sooner. */
    private List<Progress.Done> withThoseBefore(List<Progress.Done> ticked) {
        List<Progress.Done> all = new ArrayList<>(ticked);
        planned.entries().stream().filter(entry -> entry.kind() == Kind.TASK)
                .sorted(Comparator.comparingInt(Entry::order).reversed()).forEach(entry -> {
                    List<Progress.Done> later = all.stream().filter(each -> each.machine().equals(entry.machine())
                            && each.order() > entry.order()).toList();
                    if (!later.isEmpty() && all.stream().noneMatch(each -> isSame(each, done(entry, 0)))) {
                        all.add(done(entry, Math.min(entry.end(), begun(later))));
                    }
                });
        return all;
    }

    private int begun(List<Progress.Done> later) {
        return later.stream().mapToInt(done -> planned.entries().stream()
                .filter(entry -> entry.kind() == Kind.TASK && isSame(done(entry, 0), done))
                .mapToInt(entry -> Math.max(0, done.over() - (entry.end() - entry.start()))).findFirst().orElseThrow())
                .min().orElseThrow();
    }
}

package icequill.visits;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.planner.Crew;
import icequill.planner.Timetable;
import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.work.Unit;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Plans two visits of a day by the same crew, who drive from the one to the other together when all is done at the first. They have
 * their break before they drive where somebody would work too long otherwise.
 *
 * @param next the second; it begins as planned, or when they are there, if that is later
 * @param crew how many come; empty for those whom each visit names
 * @param drive minutes from site to site, from 0 to {@link #LONGEST}
 */
public record DayPlan(TimetableRequest first, VisitContext next, OptionalInt crew, int drive) {

    public static final int LONGEST = 600;

    /** Both visits, in their order. */
    public Validated<List<Stop>> stops() {
        if (drive < 0 || drive > LONGEST) {
            return Validated.invalid(new Problem(Code.OUT_OF_RANGE, next.visit().place(),
                    "a drive of " + drive + " minutes", "from 0 to " + LONGEST));
        }
        if (!next.visit().day().equals(first.hand().visit().day())) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, next.visit().place(),
                    "the second visit is on " + next.visit().day() + ", the first on " + first.hand().visit().day(),
                    "two visits of one day"));
        }
        return first.timetable().then(table -> second(table).map(stop -> List.of(
                new Stop(first, table, 1, List.of()), stop)));
    }

    private Validated<Stop> second(Timetable before) {
        return stop(before, 0).then(stop -> rest().filter(rest -> isDue(rest, before, stop))
                .map(rest -> stop(before, rest.minutes())).orElse(Validated.valid(stop)));
    }

    private Optional<Crew.Rest> rest() {
        return VisitWorkAssembly.rest(next.rates().labor());
    }

    private Validated<Stop> stop(Timetable before, int rest) {
        ZonedDateTime over = first.hand().visit().began().plusMinutes(before.minutes());
        ZonedDateTime there = over.plusMinutes(rest + drive);
        ZonedDateTime planned = next.visit().began();
        Duration late = Duration.between(planned, there);
        VisitContext moved = late.isPositive() ? next.later(late) : next;
        List<Phrase> remarks = new ArrayList<>();
        remarks.add(Phrase.of("remark.drive", time(over), Fact.number(drive, Unit.MINUTE.symbol()), time(there)));
        if (rest > 0) {
            remarks.add(Phrase.of("remark.break-between", Fact.number(rest, Unit.MINUTE.symbol())));
        }
        if (late.isPositive()) {
            remarks.add(Phrase.of("remark.later-than-planned", time(planned)));
        }
        TimetableRequest planning = TimetableRequest.of(moved, crew);
        return planning.timetable().map(table -> new Stop(planning, table, 1, remarks));
    }

    /** Whether somebody would work and drive too long from his last break at the first to his first one at the second. */
    private boolean isDue(Crew.Rest rest, Timetable before, Stop stop) {
        ZonedDateTime begins = stop.planning().hand().visit().began();
        ZonedDateTime over = first.hand().visit().began().plusMinutes(before.minutes());
        long between = Duration.between(over, begins).toMinutes();
        boolean rested = between - drive >= rest.minutes();
        return !rested && IntStream.range(0, first.people().size()).anyMatch(person -> {
            int again = stop.planning().people().indexOf(first.people().get(person));
            return again >= 0
                    && before.minutes() - since(before, person) + between + until(stop.table(), again) > rest.after();
        });
    }

    /** When somebody began to work after his last break. */
    private static int since(Timetable table, int person) {
        int rested = of(table, person, Kind.BREAK).stream().mapToInt(Entry::end).max().orElse(0);
        return of(table, person, Kind.TASK).stream().mapToInt(Entry::start).filter(start -> start >= rested).min()
                .orElse(table.minutes());
    }

    /** When somebody has his first break, or else is done. */
    private static int until(Timetable table, int person) {
        return of(table, person, Kind.BREAK).stream().mapToInt(Entry::start).min().orElseGet(
                () -> of(table, person, Kind.TASK).stream().mapToInt(Entry::end).max().orElse(0));
    }

    private static List<Entry> of(Timetable table, int person, Kind kind) {
        return table.entries().stream().filter(entry -> entry.kind() == kind && entry.people().contains(person))
                .toList();
    }

    private static Fact time(ZonedDateTime moment) {
        return new Fact.Time(moment.toLocalTime());
    }
}

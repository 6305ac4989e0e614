package icequill.visits;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.planner.Effort;
import icequill.planner.Timetable;
import icequill.planner.TourParts;
import icequill.planner.VisitWork;
import icequill.problem.Validated;
import icequill.work.BandWeek;
import icequill.work.Unit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Splits a visit that takes longer than a working day into days, as few as do: each with machines that stand near each other, from the
 * hour at which the visit begins, on working days that follow. A visit that runs is not split.
 */
public record WorkDays(TimetableRequest planning) {

    /** No more days are tried than so many times those that the minutes alone ask for. */
    private static final int MOST = 2;
    /** Enough for a bound: where that is longer than a day, nothing needs to be known of the whole. */
    private static final Effort ROUGH = new Effort(1, 1);

    /** The visit as it is, or its days in their order. */
    public Validated<List<Stop>> stops() {
        return planning.timetable(ROUGH).then(rough -> split(rough.bound()).map(Validated::valid)
                .orElseGet(() -> planning.timetable().map(table -> split(table.minutes())
                        .orElseGet(() -> List.of(new Stop(planning, table, 1, List.of()))))));
    }

    /** Empty where so many minutes are no longer than a day, or it cannot be split. */
    private Optional<List<Stop>> split(int minutes) {
        VisitContext hand = planning.hand();
        return week().longestWindow(hand.visit().day())
                .filter(longest -> longest < minutes && planning.progress().isEmpty())
                .flatMap(longest -> VisitWorkAssembly.of(hand).work().found()
                        .flatMap(work -> split(work, Math.ceilDiv(minutes, day(longest)), longest)));
    }

    private Optional<List<Stop>> split(VisitWork work, int least, int longest) {
        TourParts parts = new TourParts(work);
        return IntStream.rangeClosed(least, Math.min(MOST * least, work.walks().machines().size())).boxed()
                .flatMap(days -> stops(parts.of(days), longest).stream()).findFirst();
    }

    /** Minutes of a day: those of its longest window, or until the site closes, if that is sooner. */
    private int day(int longest) {
        return planning.hand().site().access()
                .map(hours -> hours.left(planning.hand().visit().began().toLocalTime())).filter(left -> left > 0)
                .map(left -> Math.min(left, longest)).orElse(longest);
    }

    private BandWeek week() {
        return planning.hand().rates().labor().week();
    }

    /** Empty where a day is too short for its machines. */
    private Optional<List<Stop>> stops(List<List<String>> parts, int longest) {
        Effort share = new Effort(Math.max(1, Effort.USUAL.nodes() / parts.size()), Effort.USUAL.width());
        List<Stop> stops = new ArrayList<>();
        LocalDate first = planning.hand().visit().day();
        LocalDate date = first;
        for (List<String> part : parts) {
            TimetableRequest day = planning.part(Math.toIntExact(ChronoUnit.DAYS.between(first, date)), part);
            Optional<Timetable> table = day.timetable(share).found().filter(found -> found.minutes() <= day(longest));
            if (table.isEmpty()) {
                return Optional.empty();
            }
            int number = stops.size() + 1;
            stops.add(new Stop(day, table.get(), number, List.of(remark(number, parts.size(), part, longest))));
            date = next(date);
        }
        return Optional.of(stops);
    }

    private LocalDate next(LocalDate date) {
        LocalDate next = date.plusDays(1);
        while (!week().isWorkday(next)) {
            next = next.plusDays(1);
        }
        return next;
    }

    private Phrase remark(int number, int days, List<String> machines, int longest) {
        String where = machines.stream().map(each -> planning.hand().site().machine(each).orElseThrow().where())
                .collect(Collectors.joining(", "));
        return Phrase.of("remark.day-of-visit", Fact.number(number, ""), Fact.number(days, ""),
                Fact.number(longest, Unit.MINUTE.symbol()), new Fact.Text(where));
    }
}

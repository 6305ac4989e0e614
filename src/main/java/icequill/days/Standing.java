package icequill.days;

import icequill.agreement.NearestDay;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/**
 * Where a visit that is due stands on a day.
 *
 * @param by the visit of the book that answers it; empty where none does
 */
public record Standing(State state, Optional<Attended> by) {

    /** What became of a visit that is due. */
    public enum State {
        /** It was recorded. */
        DONE,
        /** It stands in the book as a visit to come. */
        PLANNED,
        /** Its day is still to come. */
        DUE,
        /** Its day is over, and the next one is not yet due. */
        LATE,
        /** Its day is over, and the next one is due already. */
        MISSED
    }

    /**
     * Of each day of a calendar, in its order. A visit answers the day that it is nearest to, if it does the work of that day; of those that
     * were done and those that are planned one that was done.
     *
     * @param calendar rising
     * @param does whether the work of a day, by its place in the calendar, is done on a visit
     */
    static List<Standing> of(List<LocalDate> calendar, BiPredicate<Integer, Attended> does, List<Attended> visits,
            LocalDate today) {
        List<Integer> places = IntStream.range(0, calendar.size()).boxed().toList();
        return places.stream().map(due -> visits.stream()
                .filter(visit -> NearestDay.of(places, calendar::get, visit.day()).filter(due::equals).isPresent())
                .filter(visit -> does.test(due, visit))
                .min(Comparator.comparing(Attended::isPlanned).thenComparing(Attended::day)
                        .thenComparing(Attended::visit))
                .map(Standing::answered).orElseGet(() -> open(calendar, calendar.get(due), today))).toList();
    }

    private static Standing answered(Attended by) {
        return new Standing(by.isPlanned() ? State.PLANNED : State.DONE, Optional.of(by));
    }

    private static Standing open(List<LocalDate> calendar, LocalDate due, LocalDate today) {
        boolean isNextDue = calendar.stream().anyMatch(next -> next.isAfter(due) && !next.isAfter(today));
        return new Standing(!due.isBefore(today) ? State.DUE : isNextDue ? State.MISSED : State.LATE, Optional.empty());
    }
}

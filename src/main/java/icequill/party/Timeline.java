package icequill.party;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Values that hold for periods which do not overlap.
 *
 * @param <T> what is dated
 * @param entries by first day
 */
public record Timeline<T>(List<Entry<T>> entries) {

    /** One value, the days it holds for and where that was written. */
    public record Entry<T>(Period period, T value, Place place) {

        private Entry<T> endedBy(LocalDate day) {
            return period.contains(day)
                    ? new Entry<>(new Period(period.first(), Optional.of(day)), value, place)
                    : this;
        }
    }

    public Timeline {
        entries = entries.stream().sorted(Comparator.comparing(entry -> entry.period().first())).toList();
    }

    /** A problem for each two entries that claim the same day. */
    public static <T> Validated<Timeline<T>> of(List<Entry<T>> entries) {
        Problems problems = new Problems();
        Timeline<T> timeline = new Timeline<>(entries);
        for (int i = 1; i < timeline.entries.size(); i++) {
            Entry<T> later = timeline.entries.get(i);
            timeline.entries.subList(0, i).stream().filter(earlier -> earlier.period().overlaps(later.period()))
                    .forEach(earlier -> problems.add(overlap(earlier, later)));
        }
        return problems.or(() -> timeline);
    }

    public static <T> Timeline<T> always(T value) {
        return new Timeline<>(List.of(new Entry<>(new Period(LocalDate.MIN, Optional.empty()), value, Place.NOWHERE)));
    }

    public Optional<T> at(LocalDate day) {
        return entries.stream().filter(entry -> entry.period().contains(day)).map(Entry::value).findFirst();
    }

    /** The same days with each value made into another. */
    public Timeline<T> map(UnaryOperator<T> change) {
        return new Timeline<>(entries.stream()
                .map(entry -> new Entry<>(entry.period(), change.apply(entry.value()), entry.place())).toList());
    }

    /** The same with another value from a day on; what held then ends on that day, and what was to begin later is left out. */
    public Timeline<T> from(LocalDate day, T value, Place place) {
        List<Entry<T>> all = new ArrayList<>();
        entries.stream().filter(entry -> entry.period().first().isBefore(day)).map(entry -> entry.endedBy(day))
                .forEach(all::add);
        all.add(new Entry<>(new Period(day, Optional.empty()), value, place));
        return new Timeline<>(all);
    }

    /** The same with the value changed that holds on a day; the last one, where none holds; always, where there is none. */
    public Timeline<T> corrected(LocalDate day, T value) {
        if (entries.isEmpty()) {
            return always(value);
        }
        Entry<T> wrong = entries.stream().filter(entry -> entry.period().contains(day)).findFirst()
                .orElseGet(entries::getLast);
        return new Timeline<>(entries.stream()
                .map(entry -> entry.equals(wrong) ? new Entry<>(entry.period(), value, entry.place()) : entry)
                .toList());
    }

    private static <T> Problem overlap(Entry<T> earlier, Entry<T> later) {
        return new Problem(Code.OVERLAP, later.place(),
                "the days " + later.period().text() + " overlap " + earlier.period().text() + " at "
                        + earlier.place().reference(),
                "end the earlier one on " + later.period().first() + " or start this one later");
    }
}

package icequill.days;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Days proposed for visits.
 *
 * @param placed by day, person and hour
 * @param left that could not be placed, by their days
 * @param driving minutes in all, those to fixed visits among them
 * @param isBest whether it is known that no better way exists, by the weights that are used
 */
public record ProposedDays(List<Placed> placed, List<Left> left, int driving, boolean isBest) {

    private static final int HOUR = 60;

    /** A visit with its day. */
    public record Placed(Wanted visit, LocalDate day, LocalTime from, LocalTime until, Person person,
            List<Phrase> reasons) {

        public Placed {
            reasons = List.copyOf(reasons);
        }
    }

    /** A visit without one, and why. */
    public record Left(DueVisit due, Phrase why) {}

    public ProposedDays {
        placed = List.copyOf(placed);
        left = List.copyOf(left);
    }

    /**
     * Spreads visits.
     *
     * @param days rising
     * @param fixed stays that nothing moves
     */
    public static ProposedDays of(List<Wanted> visits, List<WorkDay> days, List<Person> people, List<Fixed> fixed) {
        DaySearch.Found found = new DaySearch(visits, days, people, fixed).found();
        List<Placed> placed = new ArrayList<>();
        found.tours().forEach((at, tour) -> placed.addAll(placed(visits, tour, days.get(at.day()),
                people.get(at.person()))));
        List<String> keys = placed.stream().map(one -> one.visit().due().key()).toList();
        return new ProposedDays(
                placed.stream().sorted(Comparator.comparing(Placed::day)
                        .thenComparing(one -> one.person().name()).thenComparing(Placed::from)).toList(),
                visits.stream().filter(visit -> !keys.contains(visit.due().key()))
                        .map(visit -> new Left(visit.due(), why(visit, days, people)))
                        .sorted(Comparator.comparing((Left one) -> one.due().day())
                                .thenComparing(one -> one.due().key()))
                        .toList(),
                found.tours().values().stream().mapToInt(Tour::driving).sum(), found.isBest());
    }

    private static List<Placed> placed(List<Wanted> visits, Tour tour, WorkDay day, Person person) {
        List<Integer> begins = tour.begins().orElse(List.of());
        return IntStream.range(0, begins.size()).boxed()
                .flatMap(i -> visits.stream()
                        .filter(visit -> visit.due().key().equals(tour.stops().get(i).name()))
                        .map(visit -> new Placed(visit, day.day(), time(begins.get(i)),
                                time(begins.get(i) + visit.minutes()), person,
                                reasons(visit, tour, day.day(), person))))
                .toList();
    }

    private static LocalTime time(int minutes) {
        return LocalTime.of(minutes / HOUR, minutes % HOUR);
    }

    private static List<Phrase> reasons(Wanted visit, Tour tour, LocalDate day, Person person) {
        List<Phrase> reasons = new ArrayList<>();
        reasons.add(distance(visit.due().day(), day));
        visit.due().work().visit().moved().ifPresent(reasons::add);
        List<Fact> near = tour.stops().stream().filter(stop -> !stop.name().equals(visit.due().key()))
                .filter(stop -> stop.road().isNear(visit.road())).map(Stop::site).flatMap(Optional::stream).distinct()
                .<Fact>map(Fact.Text::new).toList();
        if (!near.isEmpty()) {
            reasons.add(Phrase.of("days.near", new Fact.Several(near)));
        }
        if (!visit.due().site().closed().isEmpty()) {
            reasons.add(Phrase.of("days.closed", new Fact.Several(visit.due().site().closed().stream().sorted()
                    .<Fact>map(closed -> new Fact.Word("weekday." + closed.getValue())).toList())));
        }
        visit.due().site().access().ifPresent(hours -> reasons.add(Phrase.of("days.access",
                new Fact.Time(hours.from()), new Fact.Time(hours.until()))));
        visit.person().ifPresent(name -> reasons.add(Phrase.of(
                name.equals(person.name()) ? "days.came-last" : "days.another", new Fact.Text(name))));
        return reasons;
    }

    private static Phrase distance(LocalDate due, LocalDate day) {
        long days = day.toEpochDay() - due.toEpochDay();
        return days == 0
                ? Phrase.of("days.on-its-day")
                : Phrase.of(days < 0 ? "days.before" : "days.after", Fact.number(Math.abs(days), "day"),
                        new Fact.Day(due));
    }

    private static Phrase why(Wanted visit, List<WorkDay> days, List<Person> people) {
        if (visit.last().isBefore(visit.first())) {
            return Phrase.of("days.next-nearer");
        }
        List<WorkDay> open = days.stream().filter(day -> visit.isOn(day.day())).toList();
        if (open.isEmpty()) {
            return Phrase.of("days.none-open", new Fact.Day(visit.first()), new Fact.Day(visit.last()));
        }
        boolean fits = open.stream()
                .anyMatch(day -> new Tour(day.from(), day.until(), List.of(visit.stop())).begins().isPresent());
        return fits && !people.isEmpty()
                ? Phrase.of("days.full", new Fact.Day(visit.first()), new Fact.Day(visit.last()))
                : Phrase.of("days.too-long", Fact.number(visit.minutes(), "min"),
                        Fact.number(2L * visit.road().minutes(), "min"));
    }

    /** A visit that nobody can be proposed for, since its minutes were never planned, or several people come. */
    public static Optional<Phrase> unsuited(DueVisit due) {
        return due.minutes().isEmpty()
                ? Optional.of(Phrase.of("days.no-minutes"))
                : due.people() > 1
                        ? Optional.of(Phrase.of("days.crew", Fact.number(due.people(), "")))
                        : Optional.empty();
    }
}

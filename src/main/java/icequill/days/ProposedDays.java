package icequill.days;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Days proposed for visits.
 *
 * @param placed by day, person and hour
 * @param left that could not be placed, by their days
 * @param driving minutes in all, those to fixed visits among them
 * @param isBest whether it is known that no better way exists, by the weights that are used
 */
public record ProposedDays(List<Placed> placed, List<Left> left, int driving, boolean isBest) {

    /** A visit without one, and why. */
    public record Left(DueVisit due, Phrase why) {}

    public ProposedDays {
        placed = List.copyOf(placed);
        left = List.copyOf(left);
    }

    /**
     * Spreads visits: first those of several people, then the others.
     *
     * @param days rising
     * @param fixed stays that nothing moves
     */
    public static ProposedDays of(List<Wanted> visits, List<WorkDay> days, List<Person> people, List<Fixed> fixed) {
        Map<Boolean, List<Wanted>> byCrew = visits.stream()
                .collect(Collectors.partitioningBy(visit -> visit.due().people() > 1));
        List<Wanted> alone = byCrew.getOrDefault(false, List.of());
        CrewDays.Found crews = CrewDays.of(byCrew.getOrDefault(true, List.of()), days, people, fixed);
        DaySearch.Found found = new DaySearch(alone, days, people, crews.fixed()).found();
        List<Placed> placed = new ArrayList<>();
        found.tours().forEach((at, tour) -> {
            WorkDay day = days.get(at.day());
            Person person = people.get(at.person());
            placed.addAll(alone(alone, tour, day.day(), person));
            crews.placed().stream()
                    .filter(one -> one.day().equals(day.day()) && one.going().getFirst().person().equals(person))
                    .map(one -> because(one, tour)).forEach(placed::add);
        });
        List<String> keys = placed.stream().map(one -> one.visit().due().key()).toList();
        return new ProposedDays(
                placed.stream().sorted(Comparator.comparing(Placed::day)
                        .thenComparing(one -> one.going().getFirst().person().name()).thenComparing(Placed::from))
                        .toList(),
                visits.stream().filter(visit -> !keys.contains(visit.due().key()))
                        .map(visit -> new Left(visit.due(), why(visit, days, people)))
                        .sorted(Comparator.comparing((Left one) -> one.due().day())
                                .thenComparing(one -> one.due().key()))
                        .toList(),
                found.tours().values().stream().mapToInt(Tour::driving).sum(),
                found.isBest() && crews.placed().isEmpty());
    }

    private static List<Placed> alone(List<Wanted> visits, Tour tour, LocalDate day, Person person) {
        return visits.stream()
                .flatMap(visit -> tour.begin(visit.due().key())
                        .map(begin -> because(new Placed(visit, day, begin,
                                List.of(new Going(person, visit.minutes())), List.of()), tour))
                        .stream())
                .toList();
    }

    private static Placed because(Placed placed, Tour tour) {
        return placed.because(reasons(placed, tour));
    }

    private static List<Phrase> reasons(Placed placed, Tour tour) {
        Wanted visit = placed.visit();
        List<Phrase> reasons = new ArrayList<>();
        reasons.add(distance(visit.due().day(), placed.day()));
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
                placed.going().stream().anyMatch(one -> one.person().name().equals(name))
                        ? "days.came-last"
                        : "days.another",
                new Fact.Text(name))));
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
        if (people.size() < visit.due().people()) {
            return Phrase.of("days.too-few", Fact.number(visit.due().people(), ""), Fact.number(people.size(), ""));
        }
        boolean fits = open.stream()
                .anyMatch(day -> new Tour(day.from(), day.until(), List.of(visit.stop())).begins().isPresent());
        return fits
                ? Phrase.of("days.full", new Fact.Day(visit.first()), new Fact.Day(visit.last()))
                : Phrase.of("days.too-long", Fact.number(visit.minutes(), "min"),
                        Fact.number(2L * visit.road().minutes(), "min"));
    }

    /** Why no day can be looked for at all: how long the visit takes was never planned. */
    public static Optional<Phrase> unsuited(DueVisit due) {
        return due.minutes().isEmpty() ? Optional.of(Phrase.of("days.no-minutes")) : Optional.empty();
    }
}

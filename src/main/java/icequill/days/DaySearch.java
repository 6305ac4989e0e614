package icequill.days;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Spreads visits over the days of persons: as many as can be made, then with the least driving, with days far from their own and persons who
 * do not know the site weighed in. It tries all ways, the most promising first, and stops after a number of steps, so that the same
 * question has the same answer; then each visit is moved as long as that is better.
 */
final class DaySearch {

    /** What a visit that is not made costs; more than all days of all visits. */
    static final int UNPLACED = 100_000;

    private static final int MOST_STEPS = 3_000;

    private final List<Wanted> visits;
    private final List<WorkDay> days;
    private final List<Person> people;
    private final Map<PersonDay, Tour> tours = new HashMap<>();
    private Map<PersonDay, Tour> best = Map.of();
    private int least = Integer.MAX_VALUE;
    private int steps;

    /** A way of placing one visit, and what it adds. */
    private record Choice(PersonDay at, Tour tour, int cost) {}

    DaySearch(List<Wanted> visits, List<WorkDay> days, List<Person> people, List<Fixed> fixed) {
        this.visits = Wanted.inOrder(visits);
        this.days = days;
        this.people = people;
        IntStream.range(0, days.size()).forEach(day -> IntStream.range(0, people.size())
                .forEach(person -> tours.put(new PersonDay(day, person),
                        Tour.fixed(days.get(day), people.get(person), fixed))));
    }

    /**
     * What was found.
     *
     * @param cost in minutes of driving, with all that is weighed in
     * @param isBest whether it is known that nothing better can be found
     */
    record Found(Map<PersonDay, Tour> tours, int cost, boolean isBest) {}

    Found found() {
        int fixed = tours.values().stream().mapToInt(Tour::driving).sum();
        place(0, fixed);
        boolean isBest = steps < MOST_STEPS;
        if (!isBest) {
            tours.putAll(best);
            while (movedOne()) {
                steps++;
            }
            best = Map.copyOf(tours);
        }
        return new Found(best, least, isBest);
    }

    private void place(int next, int cost) {
        if (cost >= least) {
            return;
        }
        if (next == visits.size()) {
            best = Map.copyOf(tours);
            least = cost;
            return;
        }
        for (Choice choice : choices(visits.get(next))) {
            if (steps++ >= MOST_STEPS) {
                return;
            }
            Tour before = tours.put(choice.at(), choice.tour());
            place(next + 1, cost + choice.cost());
            tours.put(choice.at(), before);
        }
        if (steps < MOST_STEPS) {
            place(next + 1, cost + UNPLACED);
        }
    }

    /** The cheapest first. */
    private List<Choice> choices(Wanted visit) {
        Stop stop = visit.stop();
        return IntStream.range(0, days.size()).filter(day -> visit.isOn(days.get(day).day())).boxed()
                .flatMap(day -> IntStream.range(0, people.size())
                        .mapToObj(person -> new PersonDay(day, person)))
                .flatMap(at -> choices(visit, stop, at)).sorted(Comparator.comparingInt(Choice::cost)).toList();
    }

    private Stream<Choice> choices(Wanted visit, Stop stop, PersonDay at) {
        Tour tour = tours.getOrDefault(at, new Tour(0, 0, List.of()));
        int cost = visit.cost(days.get(at.day()).day(), people.get(at.person())) - tour.driving();
        return IntStream.rangeClosed(0, tour.stops().size()).mapToObj(place -> tour.with(stop, place))
                .filter(Tour::isKept).map(more -> new Choice(at, more, cost + more.driving()));
    }

    /** Moves one visit to where it costs less, or places one that was left out; false where none can be moved. */
    private boolean movedOne() {
        for (Wanted visit : visits) {
            Optional<PersonDay> from = at(visit);
            int before = from.map(at -> cost(visit, at)).orElse(UNPLACED);
            Optional<Tour> tour = from.map(tours::get);
            from.ifPresent(at -> tours.computeIfPresent(at, (place, held) -> held.without(visit.due().key())));
            List<Choice> choices = choices(visit);
            if (!choices.isEmpty() && choices.getFirst().cost() < before) {
                tours.put(choices.getFirst().at(), choices.getFirst().tour());
                least += choices.getFirst().cost() - before;
                return true;
            }
            from.ifPresent(at -> tours.put(at, tour.orElseThrow()));
        }
        return false;
    }

    private Optional<PersonDay> at(Wanted visit) {
        String key = visit.due().key();
        return tours.entrySet().stream()
                .filter(entry -> entry.getValue().stops().stream()
                        .anyMatch(stop -> stop.name().equals(key)))
                .map(Map.Entry::getKey).findFirst();
    }

    private int cost(Wanted visit, PersonDay at) {
        Tour tour = tours.getOrDefault(at, new Tour(0, 0, List.of()));
        return visit.cost(days.get(at.day()).day(), people.get(at.person())) + tour.driving()
                - tour.without(visit.due().key()).driving();
    }
}

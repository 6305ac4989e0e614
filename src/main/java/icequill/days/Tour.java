package icequill.days;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * What a person does on a day, in order: he leaves the shop when the working hours begin, and is back when they end.
 *
 * @param from minutes since midnight at which the working hours begin
 * @param until minutes since midnight at which they end
 */
record Tour(int from, int until, List<Stop> stops) {

    Tour {
        stops = List.copyOf(stops);
    }

    /** What is fixed for a person on a day. */
    static Tour fixed(WorkDay day, Person person, List<Fixed> fixed) {
        return new Tour(day.from(), day.until(), fixed.stream().filter(stay -> stay.isFor(person, day.day()))
                .map(Fixed::stop).sorted(Comparator.comparingInt(Stop::from).thenComparing(Stop::name)).toList());
    }

    /** The same with one more stop, where it begins first; empty where it cannot be kept anywhere. */
    Optional<Tour> with(Stop stop) {
        return IntStream.rangeClosed(0, stops.size()).mapToObj(place -> with(stop, place))
                .filter(Tour::isKept)
                .min(Comparator.comparing(more -> more.begin(stop.name()).orElseThrow()));
    }

    /** When a stop begins, in minutes since midnight; empty where it is not among them, or cannot be kept. */
    Optional<Integer> begin(String name) {
        int place = stops.stream().map(Stop::name).toList().indexOf(name);
        return place < 0 ? Optional.empty() : begins().map(all -> all.get(place));
    }

    /** The same with one more stop at a place in the order, from 0. */
    Tour with(Stop stop, int place) {
        List<Stop> more = new ArrayList<>(stops.size() + 1);
        more.addAll(stops.subList(0, place));
        more.add(stop);
        more.addAll(stops.subList(place, stops.size()));
        return new Tour(from, until, more);
    }

    /** The same without a stop. */
    Tour without(String name) {
        return new Tour(from, until, stops.stream().filter(stop -> !stop.name().equals(name)).toList());
    }

    /** Minutes of driving, from the shop and back. */
    int driving() {
        int minutes = 0;
        for (int i = 0; i < stops.size(); i++) {
            Road road = stops.get(i).road();
            minutes += i == 0 ? road.minutes() : stops.get(i - 1).road().to(road);
        }
        return stops.isEmpty() ? 0 : minutes + stops.getLast().road().minutes();
    }

    /** When each stop begins, in minutes since midnight; empty where one of them cannot be kept, or the day is too short. */
    Optional<List<Integer>> begins() {
        List<Integer> begins = new ArrayList<>(stops.size());
        return isKept(begins::add) ? Optional.of(begins) : Optional.empty();
    }

    boolean isKept() {
        return isKept(begin -> {
        });
    }

    private boolean isKept(IntConsumer begins) {
        int free = from;
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            int there = free + (i == 0 ? stop.road().minutes() : stops.get(i - 1).road().to(stop.road()));
            int begin = Math.max(there, stop.from());
            if ((stop.isFixed() && begin > stop.from()) || begin + stop.minutes() > stop.until()) {
                return false;
            }
            begins.accept(begin);
            free = begin + stop.minutes();
        }
        int back = stops.isEmpty() ? free : free + stops.getLast().road().minutes();
        return back <= until;
    }
}

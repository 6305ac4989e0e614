package icequill.days;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

    /** The same with one more stop at a place in the order, from 0. */
    Tour with(Stop stop, int place) {
        List<Stop> more = new ArrayList<>(stops);
        more.add(place, stop);
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
        List<Integer> begins = new ArrayList<>();
        int free = from;
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            int there = free + (i == 0 ? stop.road().minutes() : stops.get(i - 1).road().to(stop.road()));
            int begin = Math.max(there, stop.from());
            if ((stop.isFixed() && begin > stop.from()) || begin + stop.minutes() > stop.until()) {
                return Optional.empty();
            }
            begins.add(begin);
            free = begin + stop.minutes();
        }
        int back = stops.isEmpty() ? free : free + stops.getLast().road().minutes();
        return back > until ? Optional.empty() : Optional.of(begins);
    }
}

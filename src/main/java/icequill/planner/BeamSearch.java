package icequill.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Beam search for a timetable: all partial schedules with one task, then all with two, and so on, without those that another of
 * the same tasks dominates, and without those that cannot become shorter than what is known. While a layer holds fewer than the
 * width of the beam, nothing else is lost, and what comes out is proven; a full layer keeps the most promising.
 */
final class BeamSearch {

    /** How much a minute counts by which a pouring must be put off: it holds up others, which cannot be seen yet. */
    private static final int LATE = 2;

    private final Network network;
    private final StateLayout layout;
    private final Objective objective;
    private final int width;
    private final int mostNodes;
    private final int end;
    private final int walking;
    /** What each task takes of people's minutes as long as it is not placed, with what it is sure to cost besides. */
    private final int[] minutesLeft;
    private final int[] until;
    private final Branching branching;
    private int nodes;
    private int lost = Integer.MAX_VALUE;

    /**
     * A search from nothing placed.
     *
     * @param width of the beam: how many partial schedules a layer holds
     * @param nodes how many placings are tried before it gives up
     * @param end before which a timetable must end
     * @param walking minutes below which it must stay
     */
    BeamSearch(StateLayout layout, Objective objective, int width, int nodes, int end, int walking) {
        this.network = layout.network();
        this.layout = layout;
        this.objective = objective;
        this.width = width;
        this.mostNodes = nodes;
        this.end = end;
        this.walking = walking;
        int[] spared = layout.bounds().sparedAfterStart();
        this.minutesLeft = IntStream.range(0, spared.length)
                .map(task -> network.duration[task] * network.people[task] + spared[task]).toArray();
        this.until = IntStream.range(0, layout.crew()).map(layout::until).toArray();
        this.branching = new Branching(layout, objective);
    }

    /**
     * A partial schedule of a layer to come.
     *
     * @param end the least that the end will be
     * @param promise what is least in the most promising one
     * @param waste by which equally promising ones are told apart
     */
    private record Candidate(PartialSchedule schedule, int end, int promise, int waste) {}

    /** What two partial schedules have in common of which one may dominate the other. */
    private static final class StateKey {
        private final BitSet done;
        private final int[] place;

        private StateKey(PartialSchedule schedule) {
            done = schedule.done;
            place = schedule.place;
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof StateKey key && done.equals(key.done) && Arrays.equals(place, key.place);
        }

        @Override
        public int hashCode() {
            return 31 * done.hashCode() + Arrays.hashCode(place);
        }
    }

    /** The least end that a partial schedule had which was left out for want of room; the largest integer when none was. */
    int lost() {
        return lost;
    }

    int nodes() {
        return nodes;
    }

    /** The best timetable that ends before the limit; empty when none was found. */
    Optional<PartialSchedule> best() {
        List<PartialSchedule> schedules = List.of(PartialSchedule.empty(layout));
        for (int depth = 0; depth < network.size(); depth++) {
            if (nodes >= mostNodes) {
                schedules.forEach(schedule -> lost = Math.min(lost, candidate(schedule).end()));
                return Optional.empty();
            }
            Map<StateKey, List<Candidate>> next = new LinkedHashMap<>();
            for (PartialSchedule schedule : schedules) {
                extend(schedule, next);
            }
            schedules = keep(next);
        }
        return schedules.stream()
                .min(Comparator.comparingInt(PartialSchedule::end).thenComparingInt(schedule -> schedule.walking));
    }

    private List<PartialSchedule> keep(Map<StateKey, List<Candidate>> next) {
        List<Candidate> all = new ArrayList<>();
        next.values().forEach(all::addAll);
        all.sort(Comparator.comparingInt(Candidate::promise).thenComparingInt(Candidate::waste));
        for (int i = width; i < all.size(); i++) {
            lost = Math.min(lost, all.get(i).end());
        }
        return all.stream().limit(width).map(Candidate::schedule).toList();
    }

    private void extend(PartialSchedule schedule, Map<StateKey, List<Candidate>> next) {
        for (int task : branching.tasks(schedule)) {
            for (int[] people : branching.people(schedule, task)) {
                nodes++;
                PartialSchedule one = schedule.with(task, people, objective);
                if (one != null) {
                    Candidate candidate = candidate(one);
                    if (candidate.end() < end && one.walking < walking) {
                        add(candidate, next.computeIfAbsent(new StateKey(one), key -> new ArrayList<>()));
                    }
                }
            }
        }
    }

    private static void add(Candidate candidate, List<Candidate> same) {
        for (Candidate other : same) {
            if (other.schedule().dominates(candidate.schedule())) {
                return;
            }
        }
        same.removeIf(other -> candidate.schedule().dominates(other.schedule()));
        same.add(candidate);
    }

    private Candidate candidate(PartialSchedule schedule) {
        int minutes = 0;
        int[] free = new int[layout.crew()];
        for (int person = 0; person < free.length; person++) {
            free[person] = Math.max(schedule.free(person), schedule.newest());
        }
        int soonest = schedule.end();
        BitSet done = schedule.done;
        for (int task = done.nextClearBit(0); task < network.size(); task = done.nextClearBit(task + 1)) {
            minutes += minutesLeft[task];
        }
        for (int task : layout.precedence().eligible(done)) {
            soonest = Math.max(soonest, Math.max(schedule.ready(task), schedule.newest()) + network.tail[task]);
        }
        soonest = Math.max(soonest, new Capacity(free, until).least(minutes));
        int promise = objective == Objective.WALKING ? schedule.walking : soonest;
        return new Candidate(schedule, soonest, promise + LATE * schedule.lateness(),
                minutes + Arrays.stream(free).sum());
    }
}

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
 * Builds timetables layer by layer: all drafts with one task, then all with two, and so on, without those that are no better than
 * another of the same tasks, and without those that cannot become shorter than what is known. While a layer holds fewer drafts
 * than its width allows, nothing else is lost, and what comes out is proven; a full layer keeps the most promising.
 */
final class Layers {

    /** How much a minute counts by which a pouring must be put off: it holds up others, which cannot be seen yet. */
    private static final int LATE = 2;

    private final Network network;
    private final StateLayout layout;
    private final Aim aim;
    private final int width;
    private final int mostNodes;
    private final int end;
    private final int walking;
    /** What each task takes of people's minutes as long as it is not placed, with what it is sure to cost besides. */
    private final int[] minutesLeft;
    private final int[] identical;
    private int nodes;
    private int lost = Integer.MAX_VALUE;

    /**
     * Layers.
     *
     * @param width how many drafts a layer holds
     * @param nodes how many placings are tried before it gives up
     * @param end before which a timetable must end
     * @param walking minutes below which it must stay
     */
    Layers(StateLayout layout, Aim aim, int width, int nodes, int end, int walking) {
        this.network = layout.network();
        this.layout = layout;
        this.aim = aim;
        this.width = width;
        this.mostNodes = nodes;
        this.end = end;
        this.walking = walking;
        int[] spared = layout.bounds().sparedAfterStart();
        this.minutesLeft = IntStream.range(0, spared.length)
                .map(task -> network.duration[task] * network.people[task] + spared[task]).toArray();
        this.identical = IdenticalMachines.of(network);
    }

    /**
     * A draft.
     *
     * @param end the least that the end will be
     * @param promise what is least in the most promising one
     * @param waste by which equally promising ones are told apart
     */
    private record Ranked(Draft draft, int end, int promise, int waste) {}

    /** What two drafts have in common of which one may be no worse than the other. */
    private static final class Key {
        private final BitSet done;
        private final int[] place;

        private Key(Draft draft) {
            done = draft.done;
            place = draft.place;
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Key key && done.equals(key.done) && Arrays.equals(place, key.place);
        }

        @Override
        public int hashCode() {
            return 31 * done.hashCode() + Arrays.hashCode(place);
        }
    }

    /** The least end that a draft had which was left out for want of room; the largest integer when none was. */
    int lost() {
        return lost;
    }

    int nodes() {
        return nodes;
    }

    /** The best timetable that ends before the limit; empty when none was found. */
    Optional<Draft> best() {
        List<Draft> drafts = List.of(Draft.empty(layout));
        for (int depth = 0; depth < network.size(); depth++) {
            if (nodes >= mostNodes) {
                drafts.forEach(draft -> lost = Math.min(lost, ranked(draft).end()));
                return Optional.empty();
            }
            Map<Key, List<Ranked>> next = new LinkedHashMap<>();
            for (Draft draft : drafts) {
                extend(draft, next);
            }
            drafts = keep(next);
        }
        return drafts.stream().min(Comparator.comparingInt(Draft::end).thenComparingInt(draft -> draft.walking));
    }

    private List<Draft> keep(Map<Key, List<Ranked>> next) {
        List<Ranked> all = new ArrayList<>();
        next.values().forEach(all::addAll);
        all.sort(Comparator.comparingInt(Ranked::promise).thenComparingInt(Ranked::waste));
        for (int i = width; i < all.size(); i++) {
            lost = Math.min(lost, all.get(i).end());
        }
        return all.stream().limit(width).map(Ranked::draft).toList();
    }

    private void extend(Draft draft, Map<Key, List<Ranked>> next) {
        for (int task : layout.precedence().eligible(draft.done)) {
            if (!layout.precedence().isReady(task, draft.done) || isIdenticalToUntouched(task, draft) || isNotNow(task, draft)) {
                continue;
            }
            for (int[] people : choices(draft, task)) {
                nodes++;
                Draft one = draft.with(task, people, aim);
                if (one != null) {
                    Ranked ranked = ranked(one);
                    if (ranked.end() < end && one.walking < walking) {
                        add(ranked, next.computeIfAbsent(new Key(one), key -> new ArrayList<>()));
                    }
                }
            }
        }
    }

    private static void add(Ranked ranked, List<Ranked> same) {
        for (Ranked other : same) {
            if (other.draft().isNoWorse(ranked.draft())) {
                return;
            }
        }
        same.removeIf(other -> ranked.draft().isNoWorse(other.draft()));
        same.add(ranked);
    }

    /** Of machines that are alike in everything and untouched yet, the first is taken first. */
    private boolean isIdenticalToUntouched(int task, Draft draft) {
        int earlier = identical[network.machine[task]];
        return earlier >= 0 && isUntouched(network.machine[task], draft) && isUntouched(earlier, draft);
    }

    private boolean isUntouched(int machine, Draft draft) {
        return layout.precedence().isUntouched(machine, draft.done);
    }

    /** Where machines are done one by one: whether another is open, or comes before it. */
    private boolean isNotNow(int task, Draft draft) {
        if (aim != Aim.ONE_BY_ONE) {
            return false;
        }
        int machine = network.machine[task];
        return isUntouched(machine, draft) && layout.precedence().oneByOne().stream()
                .takeWhile(other -> other != machine).anyMatch(other -> !layout.precedence().isOver(other, draft.done));
    }

    private List<int[]> choices(Draft draft, int task) {
        List<int[]> choices = new ArrayList<>();
        choose(draft, task, 0, new int[0], choices);
        return choices;
    }

    /** Every set of people who may be given it; of people in the same situation the first ones. */
    private void choose(Draft draft, int task, int from, int[] chosen, List<int[]> choices) {
        if (chosen.length == network.people[task]) {
            choices.add(chosen);
            return;
        }
        for (int person = from; person < layout.crew(); person++) {
            if (layout.isFit(person, task) && isFirstOfItsKind(draft, person, from)) {
                int[] more = Arrays.copyOf(chosen, chosen.length + 1);
                more[chosen.length] = person;
                choose(draft, task, person + 1, more, choices);
            }
        }
    }

    private static boolean isFirstOfItsKind(Draft draft, int person, int from) {
        for (int other = from; other < person; other++) {
            if (draft.isAlike(other, person)) {
                return false;
            }
        }
        return true;
    }

    private Ranked ranked(Draft draft) {
        int minutes = 0;
        for (int person = 0; person < layout.crew(); person++) {
            minutes += Math.max(draft.free(person), draft.newest());
        }
        int soonest = draft.end();
        for (int task = draft.done.nextClearBit(0); task < network.size(); task = draft.done.nextClearBit(task + 1)) {
            minutes += minutesLeft[task];
        }
        for (int task : layout.precedence().eligible(draft.done)) {
            soonest = Math.max(soonest, Math.max(draft.ready(task), draft.newest()) + network.tail[task]);
        }
        soonest = Math.max(soonest, Math.ceilDiv(minutes, layout.crew()));
        int promise = aim == Aim.WALKING ? draft.walking : soonest;
        return new Ranked(draft, soonest, promise + LATE * draft.lateness(), minutes);
    }
}

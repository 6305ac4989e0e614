package icequill.planner;

import java.util.Optional;

/**
 * Looks for a short timetable in lists of tasks; unless there are many tasks then for a proof, or a shorter one, with ever wider
 * beams of partial schedules; and where nothing is proven in lists again, from the best that is known.
 */
final class Search {

    /** More tasks than these are planned by lists alone: each task placed in a schedule takes the longer, the more there are. */
    private static final int FEW = 80;
    private static final int FIRST_WIDTH = 32;
    private static final int WIDER = 8;
    /** Schedules of several people take longer to be placed. */
    private static final int DEAR = 4;
    /** Up to so many tasks a list is put soon enough for more of them to be tried: a dozen machines of twelve tasks. */
    private static final int MANY = 150;
    private static final int MORE = 6;
    private static final int LESS = 2;

    private final Network network;
    private final Crew crew;
    private final Effort effort;
    private final Started started;
    private final boolean begun;
    private int bound;
    private int nodes;

    /** @param progress what is done already; empty when nothing is, which is not the same as a visit of which nothing is done by now */
    Search(Network network, Crew crew, Effort effort, Optional<Progress> progress) {
        this.network = network;
        this.crew = crew;
        this.effort = effort;
        this.begun = progress.isPresent();
        this.started = new Started(network, progress);
    }

    /** The shortest that was found; empty when none was. */
    Optional<Timetable> shortest() {
        return begun
                ? strict(started.least(crew))
                : free().filter(paths -> paths.stretches().areRulesKept()).map(paths -> paths.timetable(bound))
                        .or(() -> strict(bound));
    }

    /**
     * By lists that heed all rules; the others care for breaks and company only by chance, which mostly is enough. Where people must
     * leave before all can be done, the fewest minutes for which they stay longer come before the end.
     */
    private Optional<Timetable> strict(int least) {
        LocalSearch lists = lists(true);
        Sequence found = lists.shortest(least, effort.nodes());
        if (found == null) {
            return Optional.empty();
        }
        Sequence less = lists.leastWalking(effort.nodes() / WIDER);
        CriticalPaths paths = new CriticalPaths(network, crew, less == null ? found : less, started);
        return Optional.of(paths.timetable(begun || paths.overstays().isEmpty()
                ? least
                : new LowerBounds(network, crew.staying()).least()));
    }

    private LocalSearch lists(boolean strict) {
        return new LocalSearch(network, crew, new ListScheduler(network, crew, strict, started));
    }

    private Optional<CriticalPaths> free() {
        bound = new LowerBounds(network, crew).least();
        LocalSearch lists = lists(false);
        boolean few = network.size() <= FEW;
        Sequence listed = lists.shortest(bound, few ? effort.nodes() / WIDER : placings());
        Optional<Sequence> first = Optional.ofNullable(listed).or(this::sequential);
        return first.map(sequence -> improved(sequence, lists));
    }

    /** How many are tried in lists in all; of few tasks fewer, since beams go before them. */
    private int placings() {
        int times = network.size() > FEW && network.size() <= MANY ? MORE : LESS;
        return (int) Math.min(Integer.MAX_VALUE, (long) times * effort.nodes());
    }

    private CriticalPaths improved(Sequence first, LocalSearch lists) {
        boolean few = network.size() <= FEW;
        Sequence best = first;
        int most = effort.nodes() / (crew.size() == 1 ? 1 : DEAR);
        for (int width = FIRST_WIDTH; few && width <= effort.width() && bound < best.end()
                && nodes < most; width *= WIDER) {
            BeamSearch beam = beam(Objective.END, width, most, best);
            best = beam.best().map(PartialSchedule::sequence).orElse(best);
            nodes += beam.nodes();
            bound = Math.max(bound, Math.min(best.end(), beam.lost()));
        }
        lists.startFrom(best);
        Sequence last = lists.shortest(bound, placings());
        return new CriticalPaths(network, crew, lessWalking(last != null && last.isBetter(best) ? last : best, lists),
                started);
    }

    private Sequence lessWalking(Sequence best, LocalSearch lists) {
        Sequence listed = lists.leastWalking(effort.nodes() / WIDER);
        Sequence less = listed != null && listed.isBetter(best) ? listed : best;
        return network.size() > FEW || less.walking() == 0
                ? less
                : beam(Objective.WALKING, FIRST_WIDTH * WIDER, nodes + effort.nodes() / WIDER, less).best()
                        .map(PartialSchedule::sequence)
                        .orElse(less);
    }

    /** The machines one after another, whoever waits meanwhile: what a visit takes without a plan. */
    Optional<Sequence> sequential() {
        return new BeamSearch(new StateLayout(network, crew), Objective.ONE_BY_ONE, FIRST_WIDTH, Integer.MAX_VALUE,
                Integer.MAX_VALUE,
                Integer.MAX_VALUE).best().map(PartialSchedule::sequence);
    }

    private BeamSearch beam(Objective objective, int width, int most, Sequence best) {
        return new BeamSearch(new StateLayout(network, crew), objective, width, Math.max(1, most - nodes),
                objective == Objective.END ? best.end() : best.end() + 1,
                objective == Objective.END ? Integer.MAX_VALUE : best.walking());
    }
}

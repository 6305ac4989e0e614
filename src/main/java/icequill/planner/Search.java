package icequill.planner;

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
    /** Where there are only lists, more of them are tried. */
    private static final int MANY = 2;

    private final Network network;
    private final Crew crew;
    private final Effort effort;
    private int nodes;

    Search(Network network, Crew crew, Effort effort) {
        this.network = network;
        this.crew = crew;
        this.effort = effort;
    }

    Timetable shortest() {
        int bound = new LowerBounds(network, crew).least();
        LocalSearch lists = new LocalSearch(network, crew);
        boolean few = network.size() <= FEW;
        Sequence listed = lists.shortest(bound, few ? effort.nodes() / WIDER : MANY * effort.nodes());
        Sequence best = listed == null ? sequential() : listed;
        int most = effort.nodes() / (crew.size() == 1 ? 1 : DEAR);
        for (int width = FIRST_WIDTH; few && width <= effort.width() && bound < best.end()
                && nodes < most; width *= WIDER) {
            BeamSearch beam = beam(Objective.END, width, most, best);
            best = beam.best().map(PartialSchedule::sequence).orElse(best);
            nodes += beam.nodes();
            bound = Math.max(bound, Math.min(best.end(), beam.lost()));
        }
        lists.startFrom(best);
        Sequence last = lists.shortest(bound, few ? effort.nodes() : MANY * effort.nodes());
        return new CriticalPaths(network, crew, lessWalking(last != null && last.isBetter(best) ? last : best, lists))
                .timetable(bound);
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
    Sequence sequential() {
        return new BeamSearch(new StateLayout(network, crew), Objective.ONE_BY_ONE, FIRST_WIDTH, Integer.MAX_VALUE,
                Integer.MAX_VALUE,
                Integer.MAX_VALUE).best().orElseThrow().sequence();
    }

    private BeamSearch beam(Objective objective, int width, int most, Sequence best) {
        return new BeamSearch(new StateLayout(network, crew), objective, width, Math.max(1, most - nodes),
                objective == Objective.END ? best.end() : best.end() + 1,
                objective == Objective.END ? Integer.MAX_VALUE : best.walking());
    }
}

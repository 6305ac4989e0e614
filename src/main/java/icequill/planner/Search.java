package icequill.planner;

import java.util.Optional;

/** Looks for the shortest timetable with ever wider layers, until it is proven or the effort is spent. */
final class Search {

    private static final int FIRST_WIDTH = 32;
    private static final int WIDER = 8;

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
        int bound = new Bounds(network, crew).least();
        Draft best = sequential();
        for (int width = FIRST_WIDTH; bound < best.end() && nodes < effort.nodes(); width *= WIDER) {
            Layers layers = layers(Aim.END, Math.min(width, effort.width()), best);
            Optional<Draft> found = layers.best();
            nodes += layers.nodes();
            best = found.orElse(best);
            bound = Math.max(bound, Math.min(best.end(), layers.lost()));
            if (width >= effort.width()) {
                break;
            }
        }
        Layers layers = layers(Aim.WALKING, Math.min(FIRST_WIDTH * WIDER, effort.width()), best);
        return new Replay(network, crew, layers.best().orElse(best)).timetable(bound);
    }

    Timetable oneAfterAnother() {
        return new Replay(network, crew, sequential()).timetable(0);
    }

    private Draft sequential() {
        return new Layers(new Columns(network, crew), Aim.ONE_BY_ONE, FIRST_WIDTH, Integer.MAX_VALUE, Integer.MAX_VALUE,
                Integer.MAX_VALUE).best().orElseThrow();
    }

    private Layers layers(Aim aim, int width, Draft best) {
        return new Layers(new Columns(network, crew), aim, width, Math.max(1, effort.nodes() - nodes),
                aim == Aim.END ? best.end() : best.end() + 1, aim == Aim.END ? Integer.MAX_VALUE : best.walking);
    }
}

package icequill.planner;

import java.util.Optional;

/** The timetable without a plan, which a planned one must not be longer than. */
final class OneAfterAnother {

    private OneAfterAnother() {
    }

    /** Of work that can be done. */
    static Timetable of(VisitWork work, Crew crew) {
        Network network = Network.of(work.sorted());
        return new CriticalPaths(network, crew,
                new Search(network, crew, Effort.USUAL, Optional.empty()).sequential().orElseThrow(),
                new Started(network, Optional.empty())).timetable(0);
    }
}

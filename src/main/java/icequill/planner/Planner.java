package icequill.planner;

import icequill.problem.Problems;
import icequill.problem.Validated;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Makes the timetable of a visit. The same work, crew and effort give the same timetable, on any computer and in whatever order
 * machines and tasks are listed; what was found is kept for the next who asks. Safe for use by many threads.
 */
public final class Planner {

    /** So many timetables are kept: those of the plans, agreements and sheets of some sites. */
    private static final int KEPT = 200;

    /** What was asked before: one site's plans, agreements and visits ask for the same again and again. */
    private static final Map<Asked, Validated<Timetable>> FOUND = new ConcurrentHashMap<>();

    private record Asked(VisitWork work, Crew crew, Effort effort) {}

    private Planner() {
    }

    /**
     * The shortest timetable that the effort finds; of equally short ones one with little walking, and of those with its sequence
     * of work the one in which everything begins as early as it can.
     *
     * @return why the work cannot be done as it is planned, where it cannot
     */
    public static Validated<Timetable> timetable(VisitWork work, Crew crew, Effort effort) {
        Asked asked = new Asked(work, crew, effort);
        Validated<Timetable> known = FOUND.get(asked);
        if (known != null) {
            return known;
        }
        if (FOUND.size() >= KEPT) {
            FOUND.clear();
        }
        Validated<Timetable> found = search(work, crew, effort);
        FOUND.put(asked, found);
        return found;
    }

    private static Validated<Timetable> search(VisitWork work, Crew crew, Effort effort) {
        Problems problems = new WorkCheck(work, crew).problems();
        return problems.or(() -> new Search(Network.of(work.sorted()), crew, effort).shortest());
    }
}

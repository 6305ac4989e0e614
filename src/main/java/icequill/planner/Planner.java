package icequill.planner;

import icequill.problem.Validated;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Makes the timetable of a visit. The same work, crew and effort give the same timetable, on any computer and in whatever order
 * machines, tasks and people are listed; what was found is kept for the next who asks. Safe for use by many threads.
 */
public final class Planner {

    /** So many timetables are kept: those of the plans, agreements and sheets of some sites. */
    private static final int KEPT = 200;

    /** What was asked before: one site's plans, agreements and visits ask for the same again and again. */
    private static final Map<Asked, Validated<Timetable>> FOUND = new ConcurrentHashMap<>();

    private record Asked(VisitWork work, Crew crew, Effort effort, Optional<Progress> progress) {}

    private Planner() {
    }

    /**
     * The shortest timetable that the effort finds; of equally short ones one with little walking, and of those with its sequence
     * of work the one in which everything begins as early as it can.
     *
     * @return why the work cannot be done as it is planned, where it cannot
     */
    public static Validated<Timetable> timetable(VisitWork work, Crew crew, Effort effort) {
        return found(work, crew, effort, Optional.empty());
    }

    /**
     * The timetable of a visit that has begun: what is done stands in it as it was done, whatever took longer or shorter than
     * planned; whatever waits for its flush is flushed first, as soon as it can be; then the rest, as short as the effort finds.
     *
     * @return why the rest cannot be done, where it cannot
     */
    public static Validated<Timetable> again(VisitWork work, Crew crew, Effort effort, Progress progress) {
        return found(work, crew, effort, Optional.of(progress));
    }

    private static Validated<Timetable> found(VisitWork work, Crew crew, Effort effort, Optional<Progress> progress) {
        SortedPeople people = SortedPeople.of(crew, progress);
        return kept(new Asked(work, people.crew(), effort, people.done())).map(people::asListed);
    }

    private static Validated<Timetable> kept(Asked asked) {
        Validated<Timetable> known = FOUND.get(asked);
        if (known != null) {
            return known;
        }
        if (FOUND.size() >= KEPT) {
            FOUND.clear();
        }
        Validated<Timetable> found = new Choices(asked.work(), asked.crew(), asked.effort(), asked.progress())
                .shortest();
        FOUND.put(asked, found);
        return found;
    }
}

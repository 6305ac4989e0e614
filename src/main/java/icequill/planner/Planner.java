package icequill.planner;

import icequill.problem.Checked;
import icequill.problem.Problems;

/** Makes the timetable of a visit. Stateless: the same work, crew and effort give the same timetable, on any machine. */
public final class Planner {

    private Planner() {
    }

    /**
     * The shortest timetable that the effort finds; of equally short ones one with little walking, and of those with its sequence
     * of work the one in which everything begins as early as it can.
     *
     * @return why the work cannot be done as it is planned, where it cannot
     */
    public static Checked<Timetable> plan(VisitWork work, Crew crew, Effort effort) {
        Problems problems = new WorkCheck(work, crew).problems();
        return problems.or(() -> new Search(Network.of(work), crew, effort).shortest());
    }

    /** The same with the machines done one after another, whoever waits meanwhile: what a visit takes without a plan. */
    public static Checked<Timetable> oneAfterAnother(VisitWork work, Crew crew) {
        Problems problems = new WorkCheck(work, crew).problems();
        return problems.or(() -> new Search(Network.of(work), crew, Effort.USUAL).oneAfterAnother());
    }
}

package icequill.planner;

/** What is to be least. */
enum Objective {
    /** The end of the visit. */
    END,
    /** The walking, where the end is given. */
    WALKING,
    /** The end, where each machine is finished before the next is begun. */
    ONE_BY_ONE
}

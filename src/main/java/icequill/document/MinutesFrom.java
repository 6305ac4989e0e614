package icequill.document;

/** Where the planned minutes of a visit come from. */
public enum MinutesFrom {
    /** The shop said so. */
    ESTIMATE,
    /** A timetable that was proven to be the shortest. */
    SHORTEST_TIMETABLE,
    /** A timetable than which there may be a shorter one. */
    TIMETABLE,
    /** All tasks' minutes, machine after machine. */
    SUM
}

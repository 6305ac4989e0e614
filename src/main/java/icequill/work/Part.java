package icequill.work;

/** Which part of a machine a task is at, as far as that says what can hurt there. */
public enum Part {
    CONDENSER,
    /** Where ice falls and lies: bin, chute, gaskets, dispenser. */
    STORAGE, WATER_FILTER,
    /** Another part, or nobody said which. */
    OTHER
}

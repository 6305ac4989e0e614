package icequill.forecast.fit;

/** The side of a machine that dirt settles on. */
public enum Side {
    CONDENSER, WATER
}

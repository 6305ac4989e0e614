package icequill.forecast;

/** Why a machine stops. */
public enum Cause {
    /** Pump, valve, probe, control: whatever the cleaning. */
    RANDOM,
    /** Dirt on an air-cooled condenser. */
    CONDENSER,
    /** Scale and slime on the side of the water. */
    WATER
}

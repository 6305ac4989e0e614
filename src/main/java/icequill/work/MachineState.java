package icequill.work;

/** The state a machine must be in for a task. */
public enum MachineState {
    MAKING_ICE,
    /** Energized but not making ice: the pump circulates. */
    CIRCULATING,
    /** Unplugged or locked out. */
    DE_ENERGIZED,
    /** The task does not touch the machine's working parts. */
    ANY;

    /** Whether a machine in this state makes no ice; one that may be in any is left as it was. */
    public boolean stopsIce() {
        return this == CIRCULATING || this == DE_ENERGIZED;
    }
}

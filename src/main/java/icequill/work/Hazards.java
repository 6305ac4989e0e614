package icequill.work;

import icequill.party.Machine;
import icequill.party.Site;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds what can hurt somebody, from the machine, the site and the work itself, so that no list that somebody forgot to fill leaves
 * anything out. What is not recorded counts as dangerous.
 */
public final class Hazards {

    private Hazards() {
    }

    /** Those that every piece of work is taken to have. */
    public static Set<Hazard> always() {
        return Arrays.stream(Hazard.values()).filter(Hazard::isAlways)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Hazard.class)));
    }

    /** Those of being at a machine of a site at all. */
    public static Set<Hazard> of(Site site, Machine machine) {
        Set<Hazard> found = EnumSet.noneOf(Hazard.class);
        add(found, Hazard.FLAMMABLE_REFRIGERANT, Flammability.of(machine.refrigerant()).mayBurn());
        add(found, Hazard.FALL, site.roof().isPresent() && !machine.groundLevel());
        return found;
    }

    /**
     * Those of a task at a machine.
     *
     * @param state that the machine is in meanwhile
     * @param chemistry of all that is used in it
     */
    public static Set<Hazard> of(Task task, Machine machine, MachineState state, Collection<Chemistry> chemistry) {
        Set<Hazard> found = EnumSet.noneOf(Hazard.class);
        boolean chemical = !task.doses().isEmpty();
        boolean flushes = task.procedure().flushes() > 0;
        add(found, Hazard.CHEMICAL, chemical);
        add(found, Hazard.ACID, chemistry.contains(Chemistry.ACID));
        add(found, Hazard.POISONOUS_GAS, chemical || flushes);
        add(found, Hazard.RESIDUE, chemical && !Set.of(Chemistry.ACID).containsAll(chemistry));
        add(found, Hazard.CHEMICAL_LEFT_ALONE, chemical && state != MachineState.DE_ENERGIZED
                && (task.unattended() > 0 || task.procedure().timer().isPresent()));
        add(found, Hazard.CHEMICAL_LEFT_TOO_LONG, task.procedure().timer().isPresent());
        if (state == MachineState.DE_ENERGIZED) {
            found.addAll(ofSwitchingOff(machine));
        }
        if (task.reachesIntoStorage()) {
            found.add(machine.ejectsByAuger() ? Hazard.AUGER : Hazard.BELOW_CIRCULATION);
        }
        if (task.isAtCondenser()) {
            found.add(Hazard.FINS);
            add(found, Hazard.FALL, machine.form() == Machine.Form.REMOTE && !machine.groundLevel());
        }
        add(found, Hazard.WATER_PRESSURE, task.part() == Part.WATER_FILTER);
        return found;
    }

    /** Those of work at a machine that must not start meanwhile. */
    public static Set<Hazard> ofSwitchingOff(Machine machine) {
        Set<Hazard> found = EnumSet.noneOf(Hazard.class);
        found.add(machine.isUnplugged() ? Hazard.START_BY_PLUG : Hazard.START_BY_SWITCH);
        add(found, Hazard.SECOND_FEED, machine.form() == Machine.Form.REMOTE);
        return found;
    }

    /** Those of a repair whose cause nobody knows yet: whatever may have to be opened or reached. */
    public static Set<Hazard> ofRepair(Machine machine) {
        Set<Hazard> found = ofSwitchingOff(machine);
        found.add(Hazard.POWER_RETURNS);
        found.add(Hazard.WATER_PRESSURE);
        found.add(machine.ejectsByAuger() ? Hazard.AUGER : Hazard.BELOW_CIRCULATION);
        add(found, Hazard.FINS, machine.cooling() == Machine.Cooling.AIR);
        add(found, Hazard.FALL, machine.form() == Machine.Form.REMOTE && !machine.groundLevel());
        return found;
    }

    /** Those that the customer's own people have when they brush the condenser of a machine that is unplugged. */
    public static Set<Hazard> ofBrushing(Machine machine) {
        Set<Hazard> found = ofSwitchingOff(machine);
        found.add(Hazard.FINS);
        return found;
    }

    private static void add(Set<Hazard> found, Hazard hazard, boolean isThere) {
        if (isThere) {
            found.add(hazard);
        }
    }
}

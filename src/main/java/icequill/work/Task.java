package icequill.work;

import icequill.party.Machine;
import icequill.party.Wording;
import icequill.problem.Place;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One thing done to a machine on a visit.
 *
 * @param name as something to do
 * @param done as something that was done; empty where the shop says no more than its name
 * @param makes the machines it applies to, by how they make ice
 * @param order its place in the order of a visit, low first
 * @param attended minutes with a technician at the machine
 * @param unattended minutes that pass by themselves afterwards
 * @param people it takes at the same time, from 1
 * @param part of the machine that it is at
 * @param cautions to be said with it, every time, besides those of its hazards
 * @param needs what everybody at it must be qualified for
 * @param procedure how it is carried out
 */
public record Task(String id, Wording name, Optional<Wording> done, Set<Machine.Make> makes,
        Set<Machine.Cooling> coolings,
        ChargeClass chargeClass,
        MachineState state, int order, int attended, int unattended, int people, Part part, DustLevel dust,
        List<Dose> doses,
        List<Caution> cautions, Set<Qualification> needs, Procedure procedure, Place place) {

    public Task {
        makes = Set.copyOf(makes);
        coolings = Set.copyOf(coolings);
        doses = List.copyOf(doses);
        cautions = List.copyOf(cautions);
        needs = Set.copyOf(needs);
    }

    /** As records and bills tell it. */
    public Wording told() {
        return done.orElse(name);
    }

    public boolean suits(Machine machine) {
        return makes.contains(machine.make()) && coolings.contains(machine.cooling());
    }

    /**
     * The state that a machine must be in for it. Where hands would reach to an auger or agitator that is de-energized, whatever
     * else the task asks for (29 CFR 1910.147). A chemical is circulated and flushed out by the machine's pump, so that for these
     * no state will not do.
     */
    public MachineState stateAt(Machine machine) {
        if (reachesIntoStorage() && machine.ejectsByAuger()) {
            return MachineState.DE_ENERGIZED;
        }
        return state == MachineState.ANY && procedure.needsPump() ? MachineState.CIRCULATING : state;
    }

    /** Whether hands are in bin or chute; also where cleaning may be done in any state and nobody says which part it is at. */
    public boolean reachesIntoStorage() {
        return part == Part.STORAGE
                || (part == Part.OTHER && state == MachineState.ANY && chargeClass == ChargeClass.CLEANING);
    }

    /** Whether it is at fins and fan; also where nobody says so but it is for air-cooled machines alone. */
    public boolean isAtCondenser() {
        return part == Part.CONDENSER || (part == Part.OTHER && coolings.equals(Set.of(Machine.Cooling.AIR)));
    }

    /**
     * How much of a material one machine takes, by its size.
     *
     * @param steps by rising size
     */
    public record Dose(String material, List<Step> steps, Place place) {
        public Dose {
            steps = steps.stream().sorted(Comparator.comparing(Step::upTo)).toList();
        }

        /** The quantity for a harvest rate in pounds per 24 hours; empty above the last step. */
        public Optional<BigDecimal> quantity(BigDecimal harvestRate) {
            return step(harvestRate).map(Step::quantity);
        }

        /** The step for a harvest rate in pounds per 24 hours; empty above the last. */
        public Optional<Step> step(BigDecimal harvestRate) {
            return steps.stream().filter(step -> harvestRate.compareTo(step.upTo()) <= 0).findFirst();
        }
    }

    /**
     * A quantity, in the material's unit, for machines up to a harvest rate (inclusive, pounds per 24 hours).
     *
     * @param water it goes into, in the unit that the label counts water in
     */
    public record Step(BigDecimal upTo, BigDecimal quantity, Optional<BigDecimal> water) {}
}

package icequill.visits;

import icequill.document.WorkSheet;
import icequill.document.WorkSheet.ByLabel;
import icequill.document.WorkSheet.Dose;
import icequill.document.WorkSheet.Kind;
import icequill.document.WorkSheet.Step;
import icequill.document.WorkSheet.Turn;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.rates.Label;
import icequill.rates.Material;
import icequill.rates.Rates;
import icequill.work.Caution;
import icequill.work.Chemistry;
import icequill.work.Hazard;
import icequill.work.Hazards;
import icequill.work.MachineState;
import icequill.work.Part;
import icequill.work.Procedure;
import icequill.work.Quantity;
import icequill.work.Reading;
import icequill.work.SafetyPaper;
import icequill.work.Task;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Makes the steps at one machine.
 *
 * @param tasks in their order, all of which suit the machine
 * @param turns when each is done, where there is a timetable
 */
public record StepsAssembly(Machine machine, List<Task> tasks, Rates rates, Language language,
        Function<Task, Optional<Turn>> turns) {

    /** In the order in which they are done: that of the timetable, where there is one; power off and on between them. */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        Map<Task, Set<Chemistry>> inside = rates.inside(tasks);
        MachineState state = first();
        boolean off = false;
        for (Task task : sequence()) {
            MachineState needed = task.stateAt(machine);
            state = needed == MachineState.ANY ? state : needed;
            if (off != (state == MachineState.DE_ENERGIZED)) {
                off = !off;
                steps.add(switching(off ? Kind.SWITCH_OFF : Kind.SWITCH_ON, state));
            }
            steps.add(step(task, state, inside.getOrDefault(task, Set.of())));
        }
        if (off) {
            steps.add(switching(Kind.SWITCH_ON, MachineState.MAKING_ICE));
        }
        return steps;
    }

    private Step step(Task task, MachineState state, Set<Chemistry> inside) {
        Set<Caution> cautions = Hazard.cautions(SafetyPaper.WORK_SHEET, Hazards.of(task, machine, state, inside));
        cautions.addAll(task.cautions());
        return new Step(Kind.TASK, task.name().in(language), task.part(), state, task.attended(), task.unattended(),
                turns.apply(task), task.doses().stream().map(this::dose).toList(), procedure(task.procedure()),
                List.copyOf(cautions));
    }

    private Step switching(Kind kind, MachineState state) {
        boolean off = kind == Kind.SWITCH_OFF;
        Set<Hazard> hazards = off ? Hazards.ofSwitchingOff(machine) : EnumSet.of(Hazard.POWER_RETURNS);
        Procedure locking = off && !machine.isUnplugged()
                ? new Procedure(Optional.empty(), 0, List.of(Reading.LOCKED_AT))
                : Procedure.NONE;
        return new Step(kind, "", Part.OTHER, state, 0, 0, Optional.empty(), List.of(), locking,
                List.copyOf(Hazard.cautions(SafetyPaper.WORK_SHEET, hazards)));
    }

    private List<Task> sequence() {
        return tasks.stream().sorted(Comparator.comparingInt(task -> turns.apply(task).map(Turn::start).orElse(0)))
                .toList();
    }

    /** A machine that makes ice without a break has no cycles to be timed. */
    private Procedure procedure(Procedure all) {
        Set<Reading> cycle = EnumSet.of(Reading.FREEZE_TIME, Reading.HARVEST_TIME);
        return machine.make() == Machine.Make.BATCH
                ? all
                : new Procedure(all.timer(), all.flushes(),
                        all.readings().stream().filter(reading -> !cycle.contains(reading)).toList());
    }

    /**
     * The state that a task finds the machine in which can do with any: the one it was left in. The first of all finds it as
     * the next one needs it; when none says, it is taken to run, which is the safe guess.
     */
    private MachineState first() {
        return sequence().stream().map(task -> task.stateAt(machine)).filter(state -> state != MachineState.ANY)
                .findFirst()
                .orElse(MachineState.MAKING_ICE);
    }

    private Dose dose(Task.Dose dose) {
        Task.Step step = dose.step(machine.harvestRate()).orElseThrow();
        Material material = rates.material(dose.material()).orElseThrow();
        return new WorkSheet.Dose(material.name().in(language), material.registration(),
                new Quantity(step.quantity(), material.unit()), byLabel(material, step));
    }

    private static Optional<ByLabel> byLabel(Material material, Task.Step step) {
        Optional<Label> label = material.label();
        return step.water().flatMap(water -> label.map(limit -> new ByLabel(new Quantity(water, limit.per()),
                new Quantity(limit.most(water), material.unit()))));
    }
}

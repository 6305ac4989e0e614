package icequill.office;

import icequill.document.WorkSheet;
import icequill.document.WorkSheet.ByLabel;
import icequill.document.WorkSheet.Dose;
import icequill.document.WorkSheet.Step;
import icequill.document.WorkSheet.Turn;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.rates.Label;
import icequill.rates.Material;
import icequill.rates.Rates;
import icequill.work.Caution;
import icequill.work.MachineState;
import icequill.work.Procedure;
import icequill.work.Quantity;
import icequill.work.Task;
import icequill.work.ToRecord;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Makes the steps at one machine.
 *
 * @param tasks in their order, all of which suit the machine
 * @param turns when each is done, where there is a timetable
 */
record StepsAssembly(Machine machine, List<Task> tasks, Rates rates, Language language,
        Function<Task, Optional<Turn>> turns) {

    /** In the order in which they are done: that of the timetable, where there is one. */
    List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        MachineState state = first();
        for (Task task : sequence()) {
            state = task.state() == MachineState.ANY ? state : task.state();
            List<Dose> doses = task.doses().stream().map(this::dose).toList();
            steps.add(new Step(task.name().in(language), state, task.attended(), task.unattended(),
                    turns.apply(task), doses, procedure(task.procedure()), cautions(task, state)));
        }
        return steps;
    }

    private List<Task> sequence() {
        return tasks.stream().sorted(Comparator.comparingInt(task -> turns.apply(task).map(Turn::start).orElse(0)))
                .toList();
    }

    /** A machine that makes ice without a break has no cycles to be timed. */
    private Procedure procedure(Procedure all) {
        Set<ToRecord> cycle = EnumSet.of(ToRecord.FREEZE_TIME, ToRecord.HARVEST_TIME);
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
        return sequence().stream().map(Task::state).filter(state -> state != MachineState.ANY).findFirst()
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

    /** What the rates say, and what follows from the task itself, so that no slip in the rates leaves it out. */
    private static List<Caution> cautions(Task task, MachineState state) {
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        cautions.addAll(task.cautions());
        if (state == MachineState.DE_ENERGIZED) {
            cautions.add(Caution.LOCK_OUT);
        }
        if (!task.doses().isEmpty()) {
            cautions.addAll(Set.of(Caution.LABEL_FIRST, Caution.GLOVES_AND_EYES, Caution.NEVER_ACID_WITH_CHLORINE));
        }
        if (task.procedure().timer().isPresent()) {
            cautions.add(Caution.STAY_WITH_TIMER);
        }
        return List.copyOf(cautions);
    }
}

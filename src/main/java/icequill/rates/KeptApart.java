package icequill.rates;

import icequill.work.ChemicalOrder;
import icequill.work.Chemistry;
import icequill.work.Finding;
import icequill.work.Finding.ChemicalUse;
import icequill.work.Procedure;
import icequill.work.Reading;
import icequill.work.Task;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether chlorine was kept apart from what makes a poisonous gas of it, by the tasks that were done in their order and by what was
 * written down. A chemical of which nobody wrote down in which task it went in is taken to have come before all tasks if it is an
 * acid, and after them if not. A pH reading counts where one was written down.
 */
record KeptApart(Finding finding, Rates rates) {

    /** The chlorine that was not; empty where all is well. */
    Optional<Material> broken() {
        List<ChemicalOrder.Step> steps = steps();
        boolean chlorine = steps.stream().anyMatch(step -> step.chemistry().contains(Chemistry.CHLORINE));
        return chlorine && !ChemicalOrder.problems(steps).isEmpty()
                ? materials().filter(material -> isOf(material, Chemistry.CHLORINE)).findFirst()
                : Optional.empty();
    }

    private List<ChemicalOrder.Step> steps() {
        List<Task> tasks = rates.done(finding);
        List<Material> others = noted().filter(material -> tasks.stream().flatMap(task -> task.doses().stream())
                .noneMatch(dose -> dose.material().equals(material.id()))).toList();
        List<ChemicalOrder.Step> steps = new ArrayList<>();
        others.stream().filter(material -> isOf(material, Chemistry.ACID)).map(this::step).forEach(steps::add);
        tasks.stream().map(this::step).forEach(steps::add);
        others.stream().filter(material -> !isOf(material, Chemistry.ACID)).map(this::step).forEach(steps::add);
        return steps;
    }

    private Stream<Material> noted() {
        return finding.chemicals().stream().map(ChemicalUse::material).flatMap(id -> rates.material(id).stream())
                .filter(material -> material.label().isPresent()).distinct();
    }

    private Stream<Material> materials() {
        return Stream.concat(noted(), rates.done(finding).stream().flatMap(task -> task.doses().stream())
                .flatMap(dose -> rates.material(dose.material()).stream()));
    }

    private static boolean isOf(Material material, Chemistry chemistry) {
        return material.label().filter(label -> label.chemistry() == chemistry).isPresent();
    }

    private ChemicalOrder.Step step(Material material) {
        return new ChemicalOrder.Step(material.id(), Set.of(material.label().orElseThrow().chemistry()), Procedure.NONE,
                finding.place());
    }

    private ChemicalOrder.Step step(Task task) {
        boolean measured = finding.chemicals().stream().anyMatch(use -> use.ph().isPresent());
        List<Reading> readings = task.procedure().readings().stream()
                .filter(reading -> measured || reading != Reading.PH).toList();
        return new ChemicalOrder.Step(task.id(), rates.chemistry(task),
                new Procedure(task.procedure().timer(), task.procedure().flushes(), readings), finding.place());
    }
}

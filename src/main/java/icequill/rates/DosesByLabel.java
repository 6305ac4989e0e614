package icequill.rates;

import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.work.ChargeClass;
import icequill.work.Chemistry;
import icequill.work.Task;
import java.util.List;
import java.util.Optional;

/** Holds the doses of all tasks, and the time they are left to work, against the labels of what is dosed. */
final class DosesByLabel {

    private final List<Material> materials;
    private final Problems problems = new Problems();

    private DosesByLabel(List<Material> materials) {
        this.materials = materials;
    }

    /** A problem for each dose that has no label, is above it, or cannot be held against it. */
    static List<Problem> problems(List<Material> materials, List<Task> tasks) {
        DosesByLabel check = new DosesByLabel(materials);
        tasks.forEach(task -> task.doses()
                .forEach(dose -> check.material(dose.material())
                        .ifPresent(material -> check.dose(task, dose, material))));
        return check.problems.list();
    }

    private Optional<Material> material(String id) {
        return materials.stream().filter(material -> material.id().equals(id)).findFirst();
    }

    private void dose(Task task, Task.Dose dose, Material material) {
        if (material.chargeClass() == ChargeClass.CHEMICALS && material.label().isEmpty()) {
            problems.add(material.withoutLabel(dose.place(), "the dose in the task \"" + task.id() + "\""));
        }
        boolean acid = material.label().filter(label -> label.chemistry() == Chemistry.ACID).isPresent();
        if (acid && task.unattended() > 0 && task.procedure().timer().isEmpty()) {
            problems.add(Code.MISSING, dose.place(),
                    "acid is left for " + task.unattended() + " minutes without a timer in the task \"" + task.id()
                            + "\"",
                    "timer: {least, most}, so that it is flushed out in time");
        }
        material.label().ifPresent(label -> {
            time(task, dose, material, label.minutes());
            dose.steps().forEach(step -> step(task, dose, step, material, label));
        });
    }

    private void time(Task task, Task.Dose dose, Material material, Label.Minutes label) {
        int shortest = task.procedure().timer().map(timer -> timer.least()).orElse(task.unattended());
        int longest = task.procedure().timer().map(timer -> timer.most()).orElse(task.attended() + task.unattended());
        if (shortest < label.least() || longest > label.most().orElse(longest)) {
            problems.add(Code.OUT_OF_RANGE, dose.place(),
                    material.id() + " is left to work from " + shortest + " to " + longest + " minutes in the task \""
                            + task.id() + "\", outside its label",
                    label.text());
        }
    }

    private void step(Task task, Task.Dose dose, Task.Step step, Material material, Label label) {
        String what = "the dose of " + material.id() + " in the task \"" + task.id() + "\" for machines up to "
                + step.upTo().toPlainString() + " lb";
        if (step.water().isEmpty()) {
            problems.add(Code.MISSING, dose.place(), what + " does not say how much water it goes into",
                    "water, in " + label.per().symbol());
            return;
        }
        if (step.quantity().compareTo(label.most(step.water().get())) > 0) {
            problems.add(material.aboveLabel(label, dose.place(), what, step.quantity(), step.water().get()));
        }
    }
}

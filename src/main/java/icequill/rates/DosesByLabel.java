package icequill.rates;

import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.work.Task;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Holds the doses of all tasks against the labels of what is dosed. */
final class DosesByLabel {

    private final List<Material> materials;
    private final Problems problems = new Problems();

    private DosesByLabel(List<Material> materials) {
        this.materials = materials;
    }

    /** A problem for each dose above its label, or that cannot be held against it. */
    static List<Problem> problems(List<Material> materials, List<Task> tasks) {
        DosesByLabel check = new DosesByLabel(materials);
        for (Task task : tasks) {
            for (Task.Dose dose : task.doses()) {
                check.material(dose.material()).ifPresent(material -> material.label().ifPresent(
                        label -> dose.steps().forEach(step -> check.step(task, dose, step, material, label))));
            }
        }
        return check.problems.list();
    }

    private Optional<Material> material(String id) {
        return materials.stream().filter(material -> material.id().equals(id)).findFirst();
    }

    private void step(Task task, Task.Dose dose, Task.Step step, Material material, Label label) {
        String what = "the dose of " + material.id() + " in the task \"" + task.id() + "\" for machines up to "
                + step.upTo().toPlainString() + " lb";
        if (step.water().isEmpty()) {
            problems.add(Code.MISSING, dose.place(), what + " does not say how much water it goes into",
                    "water, in " + label.per().symbol());
            return;
        }
        BigDecimal most = label.most(step.water().get());
        if (step.quantity().compareTo(most) > 0) {
            problems.add(Code.OUT_OF_RANGE, dose.place(),
                    what + " is " + step.quantity().toPlainString() + " " + material.unit().symbol()
                            + ", above its label",
                    "at most " + most.stripTrailingZeros().toPlainString() + " " + material.unit().symbol() + " in "
                            + step.water().get().toPlainString() + " " + label.per().symbol());
        }
    }
}

package icequill.pricer;

import icequill.party.Machine;
import icequill.pricer.ResolvedVisit.Use;
import icequill.problem.Code;
import icequill.rates.Material;
import icequill.rates.Rates;
import icequill.work.ChargeClass;
import icequill.work.Finding;
import icequill.work.OneOff;
import icequill.work.Task;
import icequill.work.Visit.Named;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was used at a visit, by the doses of its work, and what is wrong with what it says of materials. */
record MaterialNames(Rates rates, KnownNames names) {

    /** What the work at a machine took. */
    List<Use> doses(Finding finding) {
        Optional<Machine> machine = names.machine(finding.machine(), finding.place());
        List<Use> doses = new ArrayList<>();
        for (Finding.TaskDone done : finding.tasks()) {
            Optional<Task> task = names.find(new Named(done.task(), done.place()), "task", rates.tasks(), Task::id);
            if (task.isPresent() && machine.isPresent()) {
                doses.addAll(doses(task.get(), machine.get(), done));
            }
        }
        finding.chemicals().forEach(this::checkChemical);
        return doses;
    }

    private List<Use> doses(Task task, Machine machine, Finding.TaskDone done) {
        if (!task.suits(machine)) {
            names.problems().add(Code.NOT_ALLOWED, done.place(),
                    "the task \"" + task.id() + "\" is not for the machine \"" + machine.id() + "\"",
                    "it is for machines of make " + task.makes() + " and cooling " + task.coolings());
            return List.of();
        }
        List<Use> uses = new ArrayList<>();
        for (Task.Dose dose : task.doses()) {
            Optional<Material> material = names.find(new Named(dose.material(), dose.place()), "material",
                    rates.materials(),
                    Material::id);
            Optional<BigDecimal> quantity = dose.quantity(machine.harvestRate());
            if (quantity.isEmpty()) {
                names.problems().add(Code.OUT_OF_RANGE, done.place(),
                        "the task \"" + task.id() + "\" has no dose of " + dose.material() + " for a machine of "
                                + machine.harvestRate().toPlainString() + " lb",
                        "add a step to the dose at " + dose.place().reference());
            }
            if (material.isPresent() && quantity.isPresent()) {
                uses.add(new Use(material.get(), quantity.get(), Optional.of(machine), done.outcome(),
                        Optional.of(task), Optional.empty()));
            }
        }
        return uses;
    }

    /** What the record says of chemicals is not priced, but it must name chemicals. */
    private void checkChemical(Finding.ChemicalUse used) {
        List<Material> chemicals = rates.materials().stream()
                .filter(material -> material.chargeClass() == ChargeClass.CHEMICALS).toList();
        names.find(new Named(used.material(), used.place()), "chemical", chemicals, Material::id)
                .filter(material -> material.label().isEmpty()).ifPresent(
                        material -> names.problems().add(material.withoutLabel(used.place(), "what was used")));
    }

    /** What is sold by the pack is one line, so one discount can be given on it. */
    void checkPacks(List<Use> uses) {
        Map<Material, OneOff> given = new HashMap<>();
        uses.stream().filter(use -> use.material().pack().isPresent()).forEach(use -> use.less()
                .filter(less -> given.putIfAbsent(use.material(), less) != null)
                .ifPresent(second -> names.problems().add(Code.DUPLICATE_NAME, second.place(),
                        "a second discount on " + use.material().id() + ", which is charged by the pack in one line",
                        "one of the two")));
    }
}

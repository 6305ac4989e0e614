package icequill.office.asking;

import icequill.answer.entry.VisitChoices;
import icequill.answer.entry.VisitChoices.Approver;
import icequill.answer.entry.VisitChoices.Choice;
import icequill.answer.entry.VisitChoices.Earlier;
import icequill.answer.entry.VisitChoices.KnownTechnician;
import icequill.answer.entry.VisitChoices.MachineChoice;
import icequill.answer.entry.VisitChoices.Part;
import icequill.answer.entry.VisitChoices.ProposedDose;
import icequill.answer.entry.VisitChoices.TaskChoice;
import icequill.explain.ConstantKey;
import icequill.party.Contact;
import icequill.party.Machine;
import icequill.party.Wording;
import icequill.render.words.Sentences;
import icequill.work.ChargeClass;
import icequill.work.Task;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Lists what may be chosen, where a form shows all of it at once. */
record Choosing(Setting setting) {

    /** @param known who was at the site before, the last first */
    VisitChoices all(List<KnownPerson> known) {
        return new VisitChoices(setting.site().id(), setting.site().name(), setting.day(),
                known.stream().map(person -> new KnownTechnician(person.name(), person.grade().orElse(""))).toList(),
                setting.rates().labor().grades().stream().map(grade -> new Choice(grade.id(), name(grade.name())))
                        .toList(),
                setting.site().machines().stream().map(this::machine).toList(),
                setting.rates().materials().stream()
                        .map(material -> new Part(material.id(), name(material.name()), material.partNumber(),
                                unit(material.unit().symbol())))
                        .toList(),
                Arrays.stream(ChargeClass.values()).map(ConstantKey::of).toList(),
                setting.rates().adjustments().modifiers().stream().map(
                        modifier -> new Part(modifier.id(), name(modifier.name()), Optional.empty(),
                                unit(modifier.unit().symbol())))
                        .toList(),
                open("fees"), open("surcharges"),
                setting.site().contactFor(Contact.Purpose.APPROVALS)
                        .map(contact -> new Approver(contact.name(), contact.telephone(), contact.email())));
    }

    private List<Choice> open(String key) {
        return FeeQuestions.open(setting).stream().filter(fee -> fee.key().equals(key))
                .map(fee -> new Choice(fee.id(), name(fee.name()))).toList();
    }

    private MachineChoice machine(Machine machine) {
        return new MachineChoice(machine.id(), setting.name(machine),
                setting.tasks(machine).stream().map(task -> task(task, machine)).toList(),
                setting.repairs(machine).stream().map(repair -> new Earlier(repair.visit(), repair.day(),
                        repair.text(), repair.isWanted())).toList());
    }

    private TaskChoice task(Task task, Machine machine) {
        return new TaskChoice(task.id(), name(task.name()),
                task.doses().stream().flatMap(dose -> dose(dose, machine).stream()).toList());
    }

    private Optional<ProposedDose> dose(Task.Dose dose, Machine machine) {
        return setting.rates().material(dose.material()).flatMap(material -> dose.step(machine.harvestRate())
                .map(step -> new ProposedDose(material.id(), name(material.name()),
                        step.quantity().stripTrailingZeros().toPlainString(), unit(material.unit().symbol()))));
    }

    private String name(Wording wording) {
        return Sentences.capitalized(setting.sentences().in(wording));
    }

    private String unit(String symbol) {
        return setting.sentences().word("unit." + symbol);
    }
}

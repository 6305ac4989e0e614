package icequill.papers;

import icequill.document.VisitAnnouncement;
import icequill.document.VisitAnnouncement.OfMachine;
import icequill.document.Where;
import icequill.party.Contact;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.visits.VisitContext;
import icequill.work.Attendance;
import icequill.work.Call;
import icequill.work.Finding;
import icequill.work.Task;
import java.time.LocalDate;
import java.util.List;

/** Puts together what a customer is told of a visit to come: everything but what it costs. */
public record AnnouncementAssembly(VisitContext hand, Language language) {

    public VisitAnnouncement announcement(LocalDate date) {
        return new VisitAnnouncement(date, hand.shop(), language, hand.shop().paper(),
                hand.site().customer().name(), Where.of(hand.site()), hand.visit().id(), hand.visit().began(),
                hand.visit().ended(), hand.visit().people().stream().map(Attendance::person).distinct().toList(),
                hand.visit().findings().stream().map(this::machine).toList(),
                hand.visit().call().map(Call::symptom), hand.visit().order().purchaseOrder(),
                hand.terms().agreement(), hand.site().access(), hand.site().contactFor(Contact.Purpose.VISITS));
    }

    private OfMachine machine(Finding finding) {
        Machine machine = hand.site().machine(finding.machine()).orElseThrow();
        List<Task> tasks = hand.rates().done(finding);
        return new OfMachine(machine, tasks.stream().map(task -> task.name().in(language)).toList(),
                tasks.stream().anyMatch(task -> task.stateAt(machine).stopsIce()),
                tasks.stream().anyMatch(Task::reachesIntoStorage));
    }
}

package icequill.office;

import icequill.document.Attended;
import icequill.document.MachineReport;
import icequill.party.Language;
import icequill.party.Site;
import icequill.rates.Grade;
import icequill.rates.Rates;
import icequill.work.Attendance;
import icequill.work.Finding;
import icequill.work.Order;
import icequill.work.Task;
import icequill.work.Visit;
import java.util.List;
import java.util.Optional;

/** What papers say of a visit besides its price, in the language of their reader. */
record VisitReport(Site site, Visit visit, Rates rates, Language language) {

    Attended attended() {
        return attended(visit.order());
    }

    /** For papers without prices: the customer's limit is one, so it is left out. */
    Attended attendedWithoutLimit() {
        Order order = visit.order();
        return attended(new Order(order.purchaseOrder(), Optional.empty(), order.approver(), order.place()));
    }

    private Attended attended(Order order) {
        return new Attended(visit.id(), site.name(), site.storeNumber(), site.address(), visit.call(), order,
                visit.began(), visit.ended(), visit.people().stream().map(this::person).toList());
    }

    private Attended.Person person(Attendance attendance) {
        String grade = rates.labor().grade(attendance.grade()).map(Grade::name).orElseThrow().in(language);
        return new Attended.Person(attendance.person(), grade, attendance.arrived(), attendance.left());
    }

    List<MachineReport> machines() {
        return visit.findings().stream().map(this::machine).toList();
    }

    MachineReport machine(Finding finding) {
        return new MachineReport(site.machine(finding.machine()).orElseThrow(), finding,
                done(finding).stream().map(task -> task.name().in(language)).toList());
    }

    /** The tasks that were carried out, in the order in which they were written down. */
    List<Task> done(Finding finding) {
        return finding.tasks().stream().filter(done -> done.outcome().isDone())
                .map(done -> rates.task(done.task()).orElseThrow()).toList();
    }
}

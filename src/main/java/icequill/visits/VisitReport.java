package icequill.visits;

import icequill.document.MachineReport;
import icequill.document.VisitSummary;
import icequill.party.Language;
import icequill.party.Site;
import icequill.rates.Grade;
import icequill.rates.Rates;
import icequill.work.Attendance;
import icequill.work.Finding;
import icequill.work.PurchaseOrder;
import icequill.work.Sale;
import icequill.work.Task;
import icequill.work.Visit;
import java.util.List;
import java.util.Optional;

/** What papers say of a visit besides its price, in the language of their reader. */
public record VisitReport(Site site, Visit visit, Rates rates, Language language) {

    public VisitSummary attended() {
        return attended(visit.order());
    }

    /** For papers without prices: the customer's limit is one, so it is left out. */
    public VisitSummary attendedWithoutLimit() {
        PurchaseOrder order = visit.order();
        return attended(new PurchaseOrder(order.purchaseOrder(), Optional.empty(), order.approver(), order.place()));
    }

    private VisitSummary attended(PurchaseOrder order) {
        return new VisitSummary(visit.id(), site.name(), site.storeNumber(), site.address(), visit.call(), order,
                visit.began(), visit.ended(), visit.people().stream().map(this::person).toList(),
                visit.sale().map(Sale::way));
    }

    private VisitSummary.Person person(Attendance attendance) {
        String grade = rates.labor().grade(attendance.grade()).map(Grade::name).orElseThrow().in(language);
        return new VisitSummary.Person(attendance.person(), grade, attendance.arrived(), attendance.left());
    }

    public List<MachineReport> machines() {
        return visit.findings().stream().map(this::machine).toList();
    }

    public MachineReport machine(Finding finding) {
        return new MachineReport(site.machine(finding.machine()).orElseThrow(), finding,
                done(finding).stream().map(task -> task.told().in(language)).toList());
    }

    /** The tasks that were carried out, in the order in which they were written down. */
    public List<Task> done(Finding finding) {
        return finding.tasks().stream().filter(done -> done.outcome().isDone())
                .map(done -> rates.task(done.task()).orElseThrow()).toList();
    }
}

package icequill.office;

import icequill.document.Attended;
import icequill.document.Invoice;
import icequill.document.MachineReport;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.rates.Grade;
import icequill.rates.Rates;
import icequill.tax.TaxedVisit;
import icequill.work.Attendance;
import icequill.work.Finding;
import icequill.work.Task;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts an invoice together from a priced and taxed visit, leaving behind all that only the owner may see.
 *
 * @param billTo of the invoice's date
 */
record InvoiceAssembly(Shop shop, Site site, Visit visit, Rates rates, TaxedVisit taxed, BillTo billTo,
        Language language) {

    Invoice invoice(Optional<String> number, LocalDate date) {
        ChargeSheet sheet = new ChargeSheet(site, taxed);
        int days = site.customer().paymentDays().orElse(shop.paymentDays());
        return new Invoice(number, date, date.plusDays(days), shop, language, shop.paper(), billTo,
                site.customer().vendorNumber(), attended(), machines(), sheet.lines(), sheet.totals(), remarks());
    }

    private Attended attended() {
        return new Attended(visit.id(), site.name(), site.storeNumber(), site.address(), visit.call(), visit.order(),
                visit.began(), visit.ended(), visit.people().stream().map(this::person).toList());
    }

    private Attended.Person person(Attendance attendance) {
        String grade = rates.labor().grade(attendance.grade()).map(Grade::name).orElseThrow().in(language);
        return new Attended.Person(attendance.person(), grade, attendance.arrived(), attendance.left());
    }

    private List<MachineReport> machines() {
        return visit.findings().stream()
                .map(finding -> new MachineReport(site.machine(finding.machine()).orElseThrow(), finding,
                        tasks(finding)))
                .toList();
    }

    private List<String> tasks(Finding finding) {
        return finding.tasks().stream().filter(done -> done.outcome().isDone())
                .map(done -> rates.tasks().stream().filter(task -> task.id().equals(done.task())).findFirst()
                        .map(Task::name).orElseThrow().in(language))
                .toList();
    }

    private List<Phrase> remarks() {
        List<Phrase> remarks = new ArrayList<>(taxed.remarks());
        visit.order().limit().ifPresent(limit -> remarks.add(Phrase.of("remark.limit", new Fact.Amount(limit))));
        return remarks;
    }
}

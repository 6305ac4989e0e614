package icequill.shop.life;

import icequill.document.CreditNote;
import icequill.document.Invoice;
import icequill.document.StageInvoice;
import icequill.ledger.Reading;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.papers.IssuedPaper;
import icequill.life.job.JobState;
import icequill.problem.Validated;
import icequill.shop.BookedPapers;
import icequill.tax.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The invoices of the parts of a job, in the order of issue. An invoice that was issued in the place of another counts for it.
 *
 * @param quote by number, by which the job is called too
 */
public record JobBills(String quote, List<JobBill> all) {

    private static final String KIND = "STAGE";
    private static final String INVOICED = "INVOICED";
    private static final String INVOICE = "invoice";

    public JobBills {
        all = List.copyOf(all);
    }

    /** Those of the job of a quote. */
    public static JobBills of(Reading open, String quote) {
        return new JobBills(quote, open.entries().steps(KIND, quote).stream()
                .flatMap(step -> step.text(INVOICE).stream()).flatMap(number -> bill(open, number).stream()).toList());
    }

    /** Those of the job that was done by a visit; none where it was no job, or nothing was asked for before. */
    public static Optional<JobBills> ofVisit(Reading open, String visit) {
        return open.entries().visit(visit).found().stream()
                .flatMap(entry -> open.entries().stepsAt(entry.site()).stream())
                .filter(step -> step.kind().equals(KIND)).map(LifeStep::id).distinct()
                .filter(quote -> open.papers().show(quote).then(issued -> JobLife.of(open, issued)).found()
                        .filter(job -> job.state() instanceof JobState.Done done && done.visit().equals(visit))
                        .isPresent())
                .map(quote -> of(open, quote)).findFirst();
    }

    private static Optional<JobBill> bill(Reading open, String number) {
        Optional<JobBill> bill = open.papers().show(number).found().flatMap(issued -> bill(open, issued));
        return bill.filter(JobBill::isStanding).or(() -> open.papers().replacing(number).stream().findFirst()
                .flatMap(instead -> bill(open, instead.number()))).or(() -> bill);
    }

    private static Optional<JobBill> bill(Reading open, IssuedPaper issued) {
        List<CreditNote> credits = new ArrayList<>();
        open.papers().creditsOf(issued.number()).forEach(credit -> BookedPapers.paper(open, credit).found()
                .ifPresent(paper -> {
                    if (paper instanceof CreditNote note) {
                        credits.add(note);
                    }
                }));
        return BookedPapers.paper(open, issued).found().flatMap(paper -> paper instanceof StageInvoice part
                ? Optional.of(new JobBill(issued, part, credits))
                : Optional.empty());
    }

    /** That an invoice was issued, as the step after the last. */
    public static LifeStep issued(Reading open, StageInvoice paper, Optional<String> site) {
        String quote = paper.quote().number();
        return new LifeStep(KIND, quote, open.entries().steps(KIND, quote).size() + 1, INVOICED, paper.date(), site,
                Map.of(INVOICE, paper.number().orElseThrow()), Map.of());
    }

    /** Those that were not given back. */
    public Stream<JobBill> standing() {
        return all.stream().filter(JobBill::isStanding);
    }

    /** Those of them whose amounts the invoice of the work takes off. */
    public List<JobBill> advances() {
        return standing().filter(bill -> bill.paper().stage().kind() != Stage.Kind.RELEASE).toList();
    }

    /** The invoice, among those of a visit, that takes the amounts of another off. */
    public static Optional<String> user(Reading open, String number, List<IssuedPaper> ofVisit) {
        return ofVisit.stream()
                .filter(issued -> BookedPapers.paper(open, issued) instanceof Validated.Valid<?>(Invoice invoice)
                        && invoice.advanced().stream().flatMap(advanced -> advanced.bills().stream())
                                .anyMatch(bill -> bill.number().equals(number)))
                .map(IssuedPaper::number).findFirst();
    }
}

package icequill.office.billing;

import icequill.answer.BookedPaper;
import icequill.document.Invoice.AdvanceBill;
import icequill.document.RepairQuote;
import icequill.document.StageInvoice;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperKind;
import icequill.life.job.JobState;
import icequill.office.writing.PaperNumbers;
import icequill.papers.InvoiceAssembly;
import icequill.papers.StageAssembly;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.BookedPapers;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.life.JobBill;
import icequill.shop.life.JobBills;
import icequill.shop.life.JobLife;
import icequill.tax.Stage;
import java.nio.file.Path;
import java.time.Clock;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Bills the parts that an accepted repair quote asks for: its deposit, parts while the work goes on, what was held back. */
public final class StageBilling {

    private final ShopBook book;
    private final IssueDesk desk;

    private StageBilling(ShopBook book) {
        this.book = book;
        this.desk = IssueDesk.of(book);
    }

    public static StageBilling of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same with a book that may be held open. */
    public static StageBilling of(ShopBook book) {
        return new StageBilling(book);
    }

    /**
     * Issues the invoice of the next part of a kind.
     *
     * @param quote the number of the quote, however it is typed
     * @param kind not the final one, which is the invoice of the work
     */
    public Validated<BookedPaper> issue(String quote, Stage.Kind kind, IssueOptions wish) {
        BookForms forms = new BookForms(book);
        ShopFolder shop = forms.shop();
        return book.read(open -> found(open, quote)).then(job -> site(shop, job))
                .then(site -> wish.booking().of(new PendingWrite<>(book, open -> forms.unchanged(open,
                        () -> found(open, quote).then(job -> issue(open, job, site, kind, wish))))));
    }

    private static Validated<JobLife> found(Reading open, String quote) {
        return PaperNumbers.find(open, quote, EnumSet.of(PaperKind.REPAIR_QUOTE))
                .then(issued -> JobLife.of(open, issued));
    }

    private static Validated<Site> site(ShopFolder shop, JobLife job) {
        Optional<Site> site = shop.site(job.quote().issued().origin().site().orElse(""), Place.NOWHERE);
        return GlyphCheck.report(shop, new Problems()).or(site::orElseThrow);
    }

    private Validated<BookedPaper> issue(Transaction open, JobLife job, Site site, Stage.Kind kind,
            IssueOptions wish) {
        JobBills bills = JobBills.of(open, job.quote().issued().number());
        StageAssembly assembly = new StageAssembly(job.paper(), bills.quote(), site);
        return next(job.paper(), kind, bills).then(part -> ready(open, job, kind, part))
                .then(part -> open.entries().site(site.id()).then(entry -> desk.issue(open, PaperKind.INVOICE, wish,
                        new Origin(Optional.of(entry.customer()), Optional.of(entry.id()), Optional.empty(),
                                Optional.empty(), Optional.empty(), Optional.empty()),
                        number -> assembly.invoice(part, holding(bills), wish.numbered(number)))))
                .then(issued -> noted(open, issued));
    }

    private static Validated<BookedPaper> noted(Transaction open, IssuedPaper issued) {
        return BookedPapers.paper(open, issued).map(paper -> {
            open.lifeSteps().add(JobBills.issued(open, (StageInvoice) paper, issued.origin().site()));
            return BookedPaper.of(issued, open);
        });
    }

    private static List<StageInvoice> holding(JobBills bills) {
        return bills.standing().map(JobBill::paper).filter(paper -> paper.stage().held().isPositive()).toList();
    }

    /** The first part of a kind that no invoice stands for, from 1. */
    private static Validated<Integer> next(RepairQuote quote, Stage.Kind kind, JobBills bills) {
        List<Stage> stages = quote.parts().map(RepairQuote.InParts::stages).orElse(List.of());
        List<Integer> asked = IntStream.rangeClosed(1, stages.size())
                .filter(part -> stages.get(part - 1).kind() == kind).boxed().toList();
        List<Integer> billed = bills.standing().map(bill -> bill.paper().part()).toList();
        Optional<Integer> next = asked.stream().filter(part -> !billed.contains(part)).findFirst();
        if (next.isPresent()) {
            return Validated.valid(next.get());
        }
        return Validated.invalid(asked.isEmpty()
                ? notAsked(bills.quote(), kind)
                : new Problem(Code.ALREADY_EXISTS, Place.NOWHERE, "it was invoiced already: "
                        + String.join(", ", bills.standing().filter(bill -> bill.paper().stage().kind() == kind)
                                .map(bill -> bill.issued().number()).toList()),
                        "a credit note first, if that is wrong"));
    }

    private static Problem notAsked(String quote, Stage.Kind kind) {
        String allowed = "what the quote asks for";
        return switch (kind) {
        case DEPOSIT, FINAL ->
            new Problem(Code.NOT_ALLOWED, Place.NOWHERE, quote + " asks for no deposit", allowed);
        case PROGRESS -> new Problem(Code.NOT_ALLOWED, Place.NOWHERE, quote + " is not paid in parts", allowed);
        case RELEASE -> new Problem(Code.NOT_ALLOWED, Place.NOWHERE, quote + " holds nothing back", allowed);
        };
    }

    /** Nothing is asked for in advance of what is billed or will not be done; what is held back waits for the work. */
    private static Validated<Integer> ready(Reading open, JobLife job, Stage.Kind kind, int part) {
        Problems problems = new Problems();
        String quote = job.quote().issued().number();
        if (job.state() instanceof JobState.Withdrawn gone) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE, "the job was withdrawn on " + gone.since(),
                    "a job that is still open");
        } else if (kind == Stage.Kind.RELEASE) {
            if (!(job.state() instanceof JobState.Done)) {
                problems.add(Code.WRONG_ORDER, Place.NOWHERE, "the work of " + quote + " is not done yet",
                        "what is held back is asked for afterwards");
            }
            if (holding(JobBills.of(open, quote)).isEmpty()) {
                problems.add(Code.NOT_ALLOWED, Place.NOWHERE, "no invoice of " + quote + " holds anything back", "");
            }
        } else if (job.state() instanceof JobState.Done done) {
            StandingInvoices.visit(open, done.visit()).ifPresent(number -> problems.add(Code.ALREADY_EXISTS,
                    Place.NOWHERE, "the whole work was billed as " + number, "nothing is left to ask for before"));
        }
        return problems.or(() -> part);
    }

    /** What was asked for of a job before its work, by the visit that it was done on; empty where nothing was. */
    public static List<AdvanceBill> before(Reading open, String visit) {
        return JobBills.ofVisit(open, visit).map(JobBills::advances).orElse(List.of()).stream()
                .map(bill -> InvoiceAssembly.before(bill.paper(), bill.credits())).toList();
    }

    /** A problem where the invoice of the work took off what is to be given back. */
    static Validated<StageInvoice> unlessUsed(Reading open, StageInvoice paper) {
        Optional<String> user = PaperNumbers.find(open, paper.quote().number())
                .then(issued -> JobLife.of(open, issued)).found()
                .flatMap(
                        job -> job.state() instanceof JobState.Done done ? Optional.of(done.visit()) : Optional.empty())
                .flatMap(visit -> JobBills.user(open, paper.number().orElse(""),
                        StandingInvoices.among(open.papers().ofVisit(visit))));
        return user.map(number -> Validated.<StageInvoice>invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                paper.number().orElse("") + " was taken off " + number, "credit that one first")))
                .orElseGet(() -> Validated.valid(paper));
    }
}

package icequill.office.billing;

import icequill.agreement.Installment;
import icequill.answer.BookedPaper;
import icequill.answer.paper.DueInstallments;
import icequill.answer.paper.DueInstallments.One;
import icequill.answer.paper.IssuedPapers;
import icequill.document.InstallmentInvoice;
import icequill.ledger.Reading;
import icequill.ledger.entries.AgreementEntry;
import icequill.plans.DuePayments;
import icequill.plans.WholeAgreement;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.AgreementLoader;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Bills the installments of all agreements that are due. What is due is worked out from the book alone, so a run that was stopped, or killed,
 * goes on where it was, and a second one finds nothing.
 */
public final class InstallmentBilling {

    private final ShopBook book;

    private InstallmentBilling(ShopBook book) {
        this.book = book;
    }

    public static InstallmentBilling of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same with a book that may be held open. */
    public static InstallmentBilling of(ShopBook book) {
        return new InstallmentBilling(book);
    }

    /** What is due up to a day. */
    public Validated<DueInstallments> due(LocalDate until) {
        return book.read(open -> Validated.valid(
                open.entries().agreements().stream().filter(entry -> !entry.isForgotten()).toList())).map(all -> {
                    Problems problems = new Problems();
                    List<One> due = all.stream().flatMap(entry -> due(entry, until, problems).stream())
                            .sorted(Comparator.comparing(One::due).thenComparing(One::agreement)
                                    .thenComparingInt(One::number))
                            .toList();
                    return new DueInstallments(until, due, problems.list());
                });
    }

    private List<One> due(AgreementEntry entry, LocalDate until, Problems problems) {
        Validated<WholeAgreement> read = new AgreementLoader(BookForms.shop(book), new InvoicedPayments(book)::of)
                .of(new FormName.InBook(entry.id()), until);
        read.problems().stream().map(problem -> of(entry.number(), problem)).forEach(problems::add);
        return read.then(hand -> book.read(open -> Validated.valid(DuePayments.of(hand, numbers(open, entry.number()),
                done(open, hand), until)))).map(due -> {
                    due.waiting().forEach(payment -> problems.add(missed(entry.number(), payment)));
                    return due.ready().stream().map(payment -> one(entry, read.orElseThrow(), payment)).toList();
                }).found().orElse(List.of());
    }

    /** Days of visits that were done at the site without being asked for, in the term and a month before. */
    private static List<LocalDate> done(Reading open, WholeAgreement hand) {
        Set<String> calls = open.entries().calls().keySet();
        Set<String> withdrawn = open.entries().withdrawals().keySet();
        LocalDate first = hand.request().scope().term().start().minusMonths(1);
        return open.entries().visitsAt(hand.site().id()).stream()
                .filter(visit -> !visit.isPlanned() && !calls.contains(visit.id()) && !withdrawn.contains(visit.id()))
                .map(visit -> visit.began().toLocalDate()).filter(day -> !day.isBefore(first)).toList();
    }

    private static Problem missed(String agreement, Installment payment) {
        return new Problem(Code.MISSING, new Place(agreement, 0, ""),
                "the visit that was due on " + payment.due() + " is not recorded as done",
                "the visit, once it is done; what was missed is not billed");
    }

    private static One one(AgreementEntry entry, WholeAgreement hand, Installment payment) {
        return new One(entry.number(), entry.id(), payment.number(), payment.due(), hand.site().customer().name(),
                hand.site().name(), payment.amount());
    }

    private static Set<Integer> numbers(Reading open, String agreement) {
        return StandingInvoices.payments(open, agreement).map(InstallmentInvoice::payment)
                .collect(Collectors.toSet());
    }

    /**
     * Issues the invoices of some installments, each in a transaction of its own: what cannot be billed does not hold up the rest.
     *
     * @param along is told what came of each, and says whether to go on
     */
    public IssuedPapers each(List<One> due, IssueOptions wish, Predicate<Validated<BookedPaper>> along) {
        Problems problems = new Problems();
        List<BookedPaper> issued = new ArrayList<>();
        IssueOffice office = IssueOffice.of(book);
        for (One one : due) {
            Validated<BookedPaper> paper = office.installment(new FormName.InBook(one.id()), one.number(), wish);
            paper.found().ifPresent(issued::add);
            paper.problems().stream().map(problem -> of(one.agreement(), problem)).forEach(problems::add);
            if (!along.test(paper)) {
                break;
            }
        }
        return new IssuedPapers(issued, wish.booking().isTrial(), problems.list());
    }

    /** A problem that says of which agreement it is. */
    private static Problem of(String agreement, Problem problem) {
        return problem.message().contains(agreement) || !problem.place().file().isEmpty()
                ? problem
                : new Problem(problem.code(), new Place(agreement, 0, problem.place().path()), problem.message(),
                        problem.allowed());
    }
}

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
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.AgreementLoader;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
        return book.looking(held -> held.read(open -> Validated.valid(
                open.entries().agreements().stream().filter(entry -> !entry.isForgotten()).toList())).map(all -> {
                    List<Looked> looked = held.each(all, entry -> looked(held, entry, until));
                    List<Found> found = looked.stream().flatMap(each -> each.found().stream()).toList();
                    return new DueInstallments(until, sorted(found, true), sorted(found, false),
                            looked.stream().flatMap(each -> each.problems().stream()).toList());
                }));
    }

    /** An agreement's payments, and what was in the way of finding them. */
    private record Looked(List<Found> found, List<Problem> problems) {}

    /**
     * A payment.
     *
     * @param isReady whether it may be billed
     */
    private record Found(One one, boolean isReady) {}

    private static List<One> sorted(List<Found> found, boolean areReady) {
        return found.stream().filter(each -> each.isReady() == areReady).map(Found::one)
                .sorted(Comparator.comparing(One::due).thenComparing(One::agreement).thenComparingInt(One::number))
                .toList();
    }

    private static Looked looked(ShopBook book, AgreementEntry entry, LocalDate until) {
        Validated<WholeAgreement> read = new AgreementLoader(BookForms.shop(book), new InvoicedPayments(book)::of)
                .of(new FormName.InBook(entry.id()), until);
        return new Looked(read.then(hand -> book
                .read(open -> Validated.valid(DuePayments.of(hand, numbers(open, entry.number()),
                        done(open, hand), until)))
                .map(due -> Stream.concat(
                        due.ready().stream().map(payment -> new Found(one(entry, hand, payment), true)),
                        due.waiting().stream().map(payment -> new Found(one(entry, hand, payment), false))).toList()))
                .found().orElse(List.of()),
                read.problems().stream().map(problem -> of(entry.number(), problem)).toList());
    }

    /** Days of visits that may be those of the calendar, where such visits are paid. */
    private static List<LocalDate> done(Reading open, WholeAgreement hand) {
        if (hand.request().scope().billing().isPresent()) {
            return List.of();
        }
        return SlotVisits.done(open, hand.request()).stream()
                .map(visit -> visit.began().toLocalDate())
                .toList();
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
     * Issues the invoices of some installments; what cannot be billed does not hold up the rest.
     *
     * @param along is told what came of each, and says whether to go on after those that were begun
     */
    public IssuedPapers each(List<One> due, IssueOptions wish, Predicate<Validated<BookedPaper>> along) {
        boolean isTrial = wish.booking().isTrial();
        return IssuedPapers.of(
                book.looking(held -> Validated.valid(run(held, isTrial ? tried(wish) : wish).each(due, along))),
                isTrial);
    }

    private static BillingRun<One> run(ShopBook held, IssueOptions wish) {
        IssueOffice office = IssueOffice.of(held);
        return new BillingRun<>(held, wish.booking().isTrial(), one -> Optional.of(one.agreement()),
                one -> office.pendingInstallment(new FormName.InBook(one.id()), one.number(), wish),
                one -> office.installment(new FormName.InBook(one.id()), one.number(), wish),
                (one, problem) -> of(one.agreement(), problem));
    }

    /** What is tried is undone at once, so that of an agreement the earlier ones are not billed yet when the later ones are tried. */
    private static IssueOptions tried(IssueOptions wish) {
        return new IssueOptions(wish.date(), wish.language(), new Booking(wish.booking().backdate(), true, true));
    }

    /** A problem that says of which agreement it is. */
    public static Problem of(String agreement, Problem problem) {
        return problem.message().contains(agreement) || !problem.place().file().isEmpty()
                ? problem
                : new Problem(problem.code(), new Place(agreement, 0, problem.place().path()), problem.message(),
                        problem.allowed());
    }
}

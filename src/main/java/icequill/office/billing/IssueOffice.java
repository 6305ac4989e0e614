package icequill.office.billing;

import icequill.agreement.Installment;
import icequill.answer.BookedPaper;
import icequill.answer.NextInstallment;
import icequill.document.InstallmentInvoice;
import icequill.document.Paper;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.ledger.Transaction;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperKind;
import icequill.office.writing.RepairQuoting;
import icequill.papers.InstallmentAssembly;
import icequill.party.Site;
import icequill.plans.WholeAgreement;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.AgreementLoader;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.PlanLoader;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.life.QuoteLife;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** The office that issues quotes, and invoices of installments. */
public final class IssueOffice {

    private final Path folder;
    private final ShopBook book;
    private final IssueDesk desk;

    private IssueOffice(ShopBook book) {
        this.folder = book.folder();
        this.book = book;
        this.desk = IssueDesk.of(book);
    }

    public static IssueOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same with a book that may be held open. */
    public static IssueOffice of(ShopBook book) {
        return new IssueOffice(book);
    }

    /** Issues the quote of a planned repair, or of maintenance. */
    public Validated<BookedPaper> quote(FormName name, IssueOptions wish) {
        return pendingQuote(name, wish).then(wish.booking()::of);
    }

    Validated<PendingWrite<BookedPaper>> pendingQuote(FormName name, IssueOptions wish) {
        BookForms forms = new BookForms(book);
        ShopFolder shop = forms.shop();
        boolean maintenance = shop.isMaintenance(name);
        PaperKind kind = maintenance ? PaperKind.MAINTENANCE_QUOTE : PaperKind.REPAIR_QUOTE;
        return maintenance
                ? new PlanLoader(shop).of(name, wish.date()).then(hand -> pending(forms, new Unbilled(
                        hand.setting().site(), wish.date(), kind, Optional.empty(),
                        shop.form(name, List.of(FormKind.MAINTENANCE_REQUEST)),
                        number -> hand.setting().site().billTo(wish.date())
                                .then(billTo -> hand.quote(wish.numbered(number), billTo)),
                        hand.leftOut()),
                        wish))
                : RepairQuoting.of(folder, shop, name, wish.numbered("0")).then(quoting -> pending(forms,
                        new Unbilled(quoting.hand().site(), quoting.hand().visit().day(), kind, Optional.empty(),
                                shop.form(name, List.of(FormKind.PLANNED_VISIT)),
                                number -> quoting.quote(wish.numbered(number)), List.of()),
                        wish));
    }

    /**
     * Issues the invoice of one installment of an agreement.
     *
     * @param installment from 1
     */
    public Validated<BookedPaper> installment(FormName name, int installment, IssueOptions wish) {
        return pendingInstallment(name, installment, wish).then(wish.booking()::of);
    }

    /** The installment of an agreement that is to be billed next. */
    public Validated<NextInstallment> nextInstallment(FormName name, LocalDate day) {
        return new AgreementLoader(BookForms.shop(book), new InvoicedPayments(book)::of).of(name, day).then(hand -> {
            String number = hand.request().number();
            Set<Integer> billed = new HashSet<>();
            Validated<Boolean> looked = book.exists()
                    ? book.read(open -> Validated.valid(billed.addAll(
                            StandingInvoices.payments(open, number).map(InstallmentInvoice::payment).toList())))
                    : Validated.valid(true);
            return looked.map(done -> new NextInstallment(number, payable(hand)
                    .filter(payment -> !billed.contains(payment.number())).map(NextInstallment.One::of).findFirst()));
        });
    }

    /** Those that come before one; none where each is that of a visit, since one that was missed holds up no later one. */
    private static List<Integer> before(WholeAgreement hand, int payment) {
        return hand.request().scope().billing().isEmpty()
                ? List.of()
                : payable(hand).map(Installment::number).filter(number -> number < payment).toList();
    }

    /** Those that ask for something. */
    private static Stream<Installment> payable(WholeAgreement hand) {
        return hand.payments().stream().filter(hand::isPayable);
    }

    Validated<PendingWrite<BookedPaper>> pendingInstallment(FormName name, int payment, IssueOptions wish) {
        BookForms forms = new BookForms(book);
        ShopFolder shop = forms.shop();
        return new AgreementLoader(shop, new InvoicedPayments(book)::of).of(name, wish.date()).then(hand -> {
            Site site = hand.site();
            return pending(forms, new Unbilled(site, hand.request().firstDay(), PaperKind.INVOICE,
                    Optional.of(new StandingInvoices.Payment(
                            hand.request().number(), payment,
                            wish.booking().outOfOrder() ? List.of() : before(hand, payment), hand.known())),
                    Optional.empty(),
                    number -> hand.billTo(wish.date()).then(billTo -> new InstallmentAssembly(hand, billTo)
                            .invoice(payment, wish.numbered(number))),
                    List.of()),
                    wish);
        });
    }

    /**
     * A paper that no visit is behind, as it is under its number.
     *
     * @param owned the day of which whoever owned the site is the customer
     * @param form that a quote is made from
     */
    private record Unbilled(Site site, LocalDate owned, PaperKind kind, Optional<StandingInvoices.Payment> payment,
            Optional<Form> form, Function<String, Validated<? extends Paper>> paper, List<Problem> notices) {}

    private Validated<PendingWrite<BookedPaper>> pending(BookForms forms, Unbilled asked,
            IssueOptions wish) {
        return asked.paper().apply("0").map(draft -> new PendingWrite<>(book, open -> forms.unchanged(open,
                () -> open.entries().site(asked.site().id()).then(entry -> issue(open, entry, asked, wish)))));
    }

    private Validated<BookedPaper> issue(Transaction open, SiteEntry entry, Unbilled asked, IssueOptions wish) {
        return asked.payment().map(one -> StandingInvoices.unlessBilled(open, one)).orElse(Validated.valid(true))
                .then(free -> desk.issue(open, asked.kind(), wish, new Origin(
                        Optional.of(BookForms.owner(open, entry, asked.owned())), Optional.of(entry.id()),
                        Optional.empty(),
                        asked.payment().map(StandingInvoices.Payment::agreement),
                        Optional.empty(), Optional.empty()), asked.paper()))
                .map(issued -> {
                    asked.form().ifPresent(form -> open.lifeSteps().add(begun(open, issued, entry.id(), form)));
                    return BookedPaper.of(issued, open).with(asked.notices());
                });
    }

    private static LifeStep begun(Transaction open, IssuedPaper quote, String site, Form form) {
        boolean isKept = form.kind().filter(kind -> kind == FormKind.PLANNED_VISIT).isPresent()
                && open.entries().visit(form.id()).found().isPresent();
        return QuoteLife.issued(quote.number(), quote.date(), site,
                isKept ? Optional.of(form.id()) : Optional.empty(), form.data());
    }
}

package icequill.office.billing;

import icequill.agreement.Installment;
import icequill.answer.BookedPaper;
import icequill.answer.NextInstallment;
import icequill.answer.RecordedVisit;
import icequill.answer.WithdrawnVisit;
import icequill.document.InstallmentInvoice;
import icequill.document.Paper;
import icequill.files.form.FormKind;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperKind;
import icequill.office.writing.PaperIssuer;
import icequill.office.writing.RepairQuoting;
import icequill.papers.CombinedInvoiceAssembly;
import icequill.papers.InstallmentAssembly;
import icequill.papers.InvoiceAssembly;
import icequill.party.Site;
import icequill.plans.AgreementState;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.AgreementLoader;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.GlyphCheck;
import icequill.shop.PlanLoader;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.UnknownName;
import icequill.shop.VisitLoader;
import icequill.visits.VisitContext;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** The office that records visits in the book and issues invoices and quotes from it. */
public final class IssueOffice {

    private final Path folder;
    private final ShopBook book;
    private final PaperIssuer desk;
    private final IssueDates dates;

    private IssueOffice(ShopBook book) {
        this.folder = book.folder();
        this.book = book;
        this.desk = PaperIssuer.of(book);
        this.dates = new IssueDates(book);
    }

    public static IssueOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same with a book that may be held open. */
    public static IssueOffice of(ShopBook book) {
        return new IssueOffice(book);
    }

    /**
     * Records a visit, done or planned, priced first so that nothing is recorded that could not be billed. Recorded again, it takes
     * the place of what was recorded, as long as it was not billed.
     */
    public Validated<RecordedVisit> record(FormName name) {
        BookForms forms = new BookForms(book);
        ShopFolder shop = forms.shop();
        VisitBooking booking = new VisitBooking(book);
        Problems problems = new Problems();
        Optional<VisitBooking.Bookable> visit = shop.form(name, List.of(FormKind.VISIT, FormKind.PLANNED_VISIT))
                .flatMap(form -> new VisitLoader(shop).read(form, problems)
                        .flatMap(hand -> problems.take(booking.bookable(form, hand))));
        return GlyphCheck.report(shop, problems).or(visit::orElseThrow).then(bookable -> book
                .write(open -> forms.unchanged(open, () -> booking.store(bookable, open))));
    }

    /** Records a sale without a visit. */
    public Validated<RecordedVisit> record(SaleWish sale) {
        return record(sale.form(book));
    }

    /**
     * Takes a recorded visit back that is not billed; the book keeps it, and why.
     *
     * @param reason not blank
     */
    public Validated<WithdrawnVisit> withdraw(String visit, String reason) {
        if (reason.isBlank()) {
            return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "no reason is given",
                    "--reason, which the book keeps"));
        }
        return book.write(open -> known(open, visit).then(entry -> unlessBilled(open, entry))
                .then(entry -> open.register().withdraw(entry.id(), reason)
                        .map(done -> new WithdrawnVisit(entry.id(), entry.site(), entry.began().toLocalDate(),
                                reason))));
    }

    /** The visits that are recorded and have no invoice that stands, by their beginning. */
    public Validated<List<String>> unbilled() {
        return book.read(open -> Validated.valid(open.entries().visits().stream().map(VisitEntry::id)
                .filter(id -> open.entries().withdrawal(id).isEmpty() && StandingInvoices.visit(open, id).isEmpty())
                .toList()));
    }

    /** Issues the invoice of a recorded visit; one in a file is recorded first. */
    public Validated<BookedPaper> issue(FormName visit, IssueOptions wish) {
        return recorded(visit, wish).then(id -> issue(id, wish));
    }

    /** The same of one by its id. */
    public Validated<BookedPaper> issue(String visit, IssueOptions wish) {
        return pending(visit, wish).then(wish.booking()::of);
    }

    private Validated<String> recorded(FormName visit, IssueOptions wish) {
        return switch (visit) {
        case FormName.InBook(String id) -> Validated.valid(id);
        case FormName.InHand hand -> record(hand).map(RecordedVisit::visit);
        case FormName.InFile(Path file) -> wish.booking().isTrial()
                ? Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.ofFile(file.toString()),
                        "only what the book has can be tried", "first: icequill visit add " + file))
                : record(visit).map(RecordedVisit::visit);
        };
    }

    Validated<PendingWrite<BookedPaper>> pending(String visit, IssueOptions wish) {
        BookForms forms = new BookForms(book);
        return book.read(open -> visit(open, visit)).then(entry -> new VisitLoader(forms.shop())
                .of(BookForms.form(entry)).then(VisitContext::withinLimit)
                .then(hand -> InvoiceAssembly.of(hand, wish.numbered("0"))
                        .map(draft -> new PendingWrite<>(book, open -> forms.unchanged(open,
                                () -> unchanged(open, entry).then(same -> issue(open, hand, entry, wish)))))));
    }

    /** Issues one invoice for several recorded visits of a customer; all of them are billed, or none. */
    public Validated<BookedPaper> together(List<FormName> named, IssueOptions wish) {
        Problems unread = new Problems();
        List<String> visits = named.stream().flatMap(visit -> unread.take(recorded(visit, wish)).stream()).toList();
        return unread.or(() -> visits).then(ids -> together(wish, ids));
    }

    private Validated<BookedPaper> together(IssueOptions wish, List<String> visits) {
        if (Set.copyOf(visits).size() < visits.size() || visits.size() < 2) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "to bill together: " + String.join(", ", visits), "two visits or more, each once"));
        }
        BookForms forms = new BookForms(book);
        Problems problems = new Problems();
        List<VisitEntry> entries = new ArrayList<>();
        List<VisitContext> hands = new ArrayList<>();
        for (String id : visits) {
            problems.take(book.read(open -> visit(open, id))).ifPresent(entry -> problems.take(
                    new VisitLoader(forms.shop()).of(BookForms.form(entry)).then(VisitContext::withinLimit))
                    .ifPresent(hand -> {
                        entries.add(entry);
                        hands.add(hand);
                    }));
        }
        return problems.or(() -> hands).then(valid -> CombinedInvoiceAssembly.of(valid, wish.numbered("0")))
                .then(draft -> wish.booking().of(new PendingWrite<>(book, open -> forms.unchanged(open,
                        () -> together(open, entries, hands, wish)))));
    }

    private Validated<BookedPaper> together(Transaction open, List<VisitEntry> entries, List<VisitContext> hands,
            IssueOptions wish) {
        Problems problems = new Problems();
        List<SiteEntry> sites = new ArrayList<>();
        List<VisitEntry> ordered = entries.stream().sorted(Comparator.comparing(VisitEntry::began)).toList();
        for (VisitEntry entry : ordered) {
            problems.take(unchanged(open, entry).then(same -> unlessBilled(open, entry)));
            problems.addAll(dates.stillToCome(entry.id(), entry.ended()).list());
            problems.take(open.entries().siteNow(entry.site())).ifPresent(sites::add);
        }
        List<String> customers = sites.stream().map(SiteEntry::customer).distinct().toList();
        if (customers.size() > 1) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                    "they are visits of several customers: " + String.join(", ", customers), "visits of one");
        }
        List<Origin.At> further = new ArrayList<>();
        for (int i = 1; i < sites.size(); i++) {
            further.add(new Origin.At(ordered.get(i).id(), sites.get(i).id()));
        }
        return problems.or(() -> Origin.ofVisit(customers.getFirst(), sites.getFirst().id(), ordered.getFirst().id())
                .with(further)).then(origin -> issue(open, PaperKind.INVOICE, wish, origin,
                        number -> CombinedInvoiceAssembly.of(hands, wish.numbered(number))))
                .map(paper -> BookedPaper.of(paper, open)
                        .with(hands.stream().flatMap(hand -> hand.notices().stream()).toList()));
    }

    /** A colleague may have recorded it anew. */
    private static Validated<VisitEntry> unchanged(Transaction open, VisitEntry entry) {
        return open.entries().visit(entry.id()).then(now -> now.equals(entry)
                ? Validated.valid(now)
                : Validated.invalid(BookForms.changed("visit \"" + entry.id() + "\"")));
    }

    /** One that was done and stands. */
    private static Validated<VisitEntry> visit(Reading open, String id) {
        return known(open, id).then(entry -> VisitBooking.standing(open, entry)).then(entry -> entry.isPlanned()
                ? Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "visit \"" + id + "\" is only planned", "first record what was done: icequill visit add FILE"))
                : Validated.valid(entry));
    }

    private static Validated<VisitEntry> known(Reading open, String id) {
        return open.entries().visit(id).found().map(Validated::valid)
                .orElseGet(() -> Validated.invalid(open.entries().agreement(id).isPresent()
                        ? new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "\"" + id + "\" is an agreement",
                                "--installment N; which is next: icequill agreement next " + id)
                        : UnknownName.name("visit", id,
                                open.entries().visits().stream().map(VisitEntry::id).toList(),
                                "record it first: icequill visit add FILE")));
    }

    private static Validated<VisitEntry> unlessBilled(Reading open, VisitEntry entry) {
        return StandingInvoices.visit(open, entry.id()).map(number -> Validated.<VisitEntry>invalid(new Problem(
                Code.ALREADY_EXISTS, Place.NOWHERE, "visit \"" + entry.id() + "\" was billed as " + number,
                "if that is wrong: icequill credit issue " + number))).orElse(Validated.valid(entry));
    }

    private Validated<BookedPaper> issue(Transaction open, VisitContext hand, VisitEntry entry, IssueOptions wish) {
        return unlessBilled(open, entry)
                .then(free -> dates.stillToCome(entry.id(), entry.ended()).or(() -> free))
                .then(free -> open.entries().site(entry.site()))
                .then(site -> issue(open, PaperKind.INVOICE, wish,
                        Origin.ofVisit(site.customer(), site.id(), entry.id()),
                        number -> InvoiceAssembly.of(hand, wish.numbered(number))))
                .map(paper -> BookedPaper.of(paper, open).with(hand.notices()));
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
                        hand.setting().site(), kind, Optional.empty(),
                        number -> hand.setting().site().billTo(wish.date())
                                .then(billTo -> hand.quote(wish.numbered(number), billTo)),
                        hand.leftOut()),
                        wish))
                : RepairQuoting.of(folder, shop, name, wish.numbered("0")).then(quoting -> pending(forms,
                        new Unbilled(quoting.hand().site(), kind, Optional.empty(),
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

    /** Those that ask for something. */
    private static Stream<Installment> payable(AgreementState hand) {
        return hand.payments().stream().filter(hand::isPayable);
    }

    Validated<PendingWrite<BookedPaper>> pendingInstallment(FormName name, int payment, IssueOptions wish) {
        BookForms forms = new BookForms(book);
        ShopFolder shop = forms.shop();
        return new AgreementLoader(shop, new InvoicedPayments(book)::of).of(name, wish.date()).then(hand -> {
            Site site = hand.setting().whole();
            return pending(forms, new Unbilled(site, PaperKind.INVOICE,
                    Optional.of(new StandingInvoices.Payment(
                            hand.request().number(), payment, wish.booking().outOfOrder()
                                    ? List.of()
                                    : payable(hand).map(Installment::number).filter(number -> number < payment)
                                            .toList(),
                            InvoicedPayments.known(hand))),
                    number -> site.billTo(wish.date()).then(billTo -> new InstallmentAssembly(hand, billTo)
                            .invoice(payment, wish.numbered(number))),
                    List.of()),
                    wish);
        });
    }

    /** A paper that no visit is behind, as it is under its number. */
    private record Unbilled(Site site, PaperKind kind, Optional<StandingInvoices.Payment> payment,
            Function<String, Validated<? extends Paper>> paper, List<Problem> notices) {}

    private Validated<PendingWrite<BookedPaper>> pending(BookForms forms, Unbilled asked,
            IssueOptions wish) {
        return asked.paper().apply("0").map(draft -> new PendingWrite<>(book, open -> forms.unchanged(open,
                () -> open.entries().site(asked.site().id()).then(entry -> issue(open, entry, asked, wish)))));
    }

    private Validated<BookedPaper> issue(Transaction open, SiteEntry entry, Unbilled asked, IssueOptions wish) {
        return asked.payment().map(one -> StandingInvoices.unlessBilled(open, one)).orElse(Validated.valid(true))
                .then(free -> issue(open, asked.kind(), wish, new Origin(Optional.of(entry.customer()),
                        Optional.of(entry.id()), Optional.empty(),
                        asked.payment().map(StandingInvoices.Payment::agreement),
                        Optional.empty(), Optional.empty()), asked.paper()))
                .map(issued -> BookedPaper.of(issued, open).with(asked.notices()));
    }

    private Validated<IssuedPaper> issue(Transaction open, PaperKind kind, IssueOptions wish, Origin origin,
            Function<String, Validated<? extends Paper>> paper) {
        return dates.issue(open, kind, wish.date(), wish.booking().backdate(),
                () -> desk.issue(open, kind, wish.date(), origin, paper));
    }
}

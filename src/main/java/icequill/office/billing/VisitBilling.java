package icequill.office.billing;

import icequill.answer.BookedPaper;
import icequill.answer.RecordedVisit;
import icequill.answer.paper.IssuedPapers;
import icequill.document.Invoice.AdvanceBill;
import icequill.ledger.Transaction;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperKind;
import icequill.papers.CombinedInvoiceAssembly;
import icequill.papers.InvoiceAssembly;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.shop.VisitLoader;
import icequill.visits.PrepaidVisits;
import icequill.visits.RouteVisits;
import icequill.visits.VisitContext;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Issues invoices of recorded visits, of each its own or of several together. */
public final class VisitBilling {

    private final ShopBook book;
    private final IssueDesk desk;

    private VisitBilling(ShopBook book) {
        this.book = book;
        this.desk = IssueDesk.of(book);
    }

    public static VisitBilling of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same with a book that may be held open. */
    public static VisitBilling of(ShopBook book) {
        return new VisitBilling(book);
    }

    /** Issues the invoice of a recorded visit; one in a file is recorded first. */
    public Validated<BookedPaper> issue(FormName visit, IssueOptions wish) {
        return recorded(visit, wish).then(id -> pending(id, wish)).then(wish.booking()::of);
    }

    /**
     * Issues an invoice for each of some visits; what cannot be billed does not hold up the rest.
     *
     * @param along is told what came of each, and says whether to go on after those that were begun
     */
    public IssuedPapers each(List<FormName> visits, IssueOptions wish, Predicate<Validated<BookedPaper>> along) {
        return book.exists()
                ? IssuedPapers.of(book.looking(held -> Validated.valid(of(held).run(wish).each(visits, along))),
                        wish.booking().isTrial())
                : run(wish).each(visits, along);
    }

    private BillingRun<FormName> run(IssueOptions wish) {
        return new BillingRun<>(book, wish.booking().isTrial(), this::site,
                visit -> recorded(visit, wish).then(id -> pending(id, wish)), visit -> issue(visit, wish),
                (visit, problem) -> problem);
    }

    /** Of a visit that the book has. */
    private Optional<String> site(FormName visit) {
        return visit instanceof FormName.InBook(String id)
                ? book.read(open -> open.entries().visit(id)).found().map(VisitEntry::site)
                : Optional.empty();
    }

    private Validated<String> recorded(FormName visit, IssueOptions wish) {
        return switch (visit) {
        case FormName.InBook(String id) -> Validated.valid(id);
        case FormName.InHand hand -> RecordOffice.of(book).record(hand).map(RecordedVisit::visit);
        case FormName.InFile(Path file) -> wish.booking().isTrial()
                ? Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.ofFile(file.toString()),
                        "only what the book has can be tried", "first: icequill visit add " + file))
                : RecordOffice.of(book).record(visit).map(RecordedVisit::visit);
        };
    }

    Validated<PendingWrite<BookedPaper>> pending(String visit, IssueOptions wish) {
        BookForms forms = new BookForms(book);
        return book.read(open -> RecordedVisits.billable(open, visit)).then(entry -> new VisitLoader(forms.shop())
                .of(BookForms.form(entry)).then(VisitContext::withinLimit)
                .then(hand -> book.read(open -> InvoiceAssembly.of(hand, StageBilling.before(open, visit),
                        wish.numbered("0")))
                        .map(draft -> new PendingWrite<>(book, open -> forms.unchanged(open,
                                () -> RecordedVisits.unchanged(open, entry)
                                        .then(same -> issue(open, hand, entry, wish)))))));
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
            problems.take(book.read(open -> RecordedVisits.billable(open, id))).ifPresent(entry -> problems.take(
                    new VisitLoader(forms.shop()).of(BookForms.form(entry)))
                    .ifPresent(hand -> {
                        entries.add(entry);
                        hands.add(hand);
                    }));
        }
        return problems.or(() -> hands).then(valid -> new RouteVisits(valid).shared())
                .then(valid -> new PrepaidVisits(valid).drawn()).then(VisitBilling::withinLimits)
                .then(valid -> CombinedInvoiceAssembly.of(valid, wish.numbered("0"))
                        .then(draft -> wish.booking().of(new PendingWrite<>(book, open -> forms.unchanged(open,
                                () -> together(open, entries, valid, wish))))));
    }

    private static Validated<List<VisitContext>> withinLimits(List<VisitContext> hands) {
        Problems problems = new Problems();
        hands.forEach(hand -> problems.take(hand.withinLimit()));
        return problems.or(() -> hands);
    }

    private Validated<BookedPaper> together(Transaction open, List<VisitEntry> entries, List<VisitContext> hands,
            IssueOptions wish) {
        Problems problems = new Problems();
        List<SiteEntry> sites = new ArrayList<>();
        Set<String> customers = new LinkedHashSet<>();
        List<VisitEntry> ordered = entries.stream().sorted(Comparator.comparing(VisitEntry::began)).toList();
        for (VisitEntry entry : ordered) {
            problems.take(RecordedVisits.unchanged(open, entry).then(same -> RecordedVisits.unlessBilled(open, entry)));
            problems.addAll(desk.dates().stillToCome(entry.id(), entry.ended()).list());
            problems.take(open.entries().siteNow(entry.site())).ifPresent(site -> {
                sites.add(site);
                customers.add(BookForms.owner(open, site, entry.began().toLocalDate()));
            });
        }
        hands.forEach(hand -> problems.addAll(DiagnosesTakenOff.problems(open, hand.visit())));
        hands.stream().map(hand -> hand.visit().id()).filter(id -> !StageBilling.before(open, id).isEmpty())
                .forEach(id -> problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                        "a part of visit \"" + id + "\" was invoiced before", "an invoice of its own"));
        if (customers.size() > 1) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                    "they are visits of several customers: " + String.join(", ", customers), "visits of one");
        }
        List<Origin.At> further = new ArrayList<>();
        for (int i = 1; i < sites.size(); i++) {
            further.add(new Origin.At(ordered.get(i).id(), sites.get(i).id()));
        }
        return problems
                .or(() -> Origin.ofVisit(customers.iterator().next(), sites.getFirst().id(), ordered.getFirst().id())
                        .with(further))
                .then(origin -> desk.issue(open, PaperKind.INVOICE, wish, origin,
                        number -> CombinedInvoiceAssembly.of(hands, wish.numbered(number))))
                .map(paper -> BookedPaper.of(paper, open)
                        .with(hands.stream().flatMap(hand -> hand.notices().stream()).toList()));
    }

    private Validated<BookedPaper> issue(Transaction open, VisitContext hand, VisitEntry entry, IssueOptions wish) {
        return RecordedVisits.unlessBilled(open, entry)
                .then(free -> DiagnosesTakenOff.standing(open, hand.visit()))
                .then(free -> desk.dates().stillToCome(entry.id(), entry.ended()).or(() -> free))
                .then(free -> open.entries().site(entry.site()))
                .then(site -> {
                    List<AdvanceBill> before = StageBilling.before(open, entry.id());
                    return desk.issue(open, PaperKind.INVOICE, wish,
                            Origin.ofVisit(BookForms.owner(open, site, entry.began().toLocalDate()), site.id(),
                                    entry.id()),
                            number -> InvoiceAssembly.of(hand, before, wish.numbered(number)));
                })
                .map(paper -> BookedPaper.of(paper, open).with(hand.notices()));
    }
}

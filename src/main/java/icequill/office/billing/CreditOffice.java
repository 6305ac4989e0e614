package icequill.office.billing;

import icequill.answer.BookedPaper;
import icequill.answer.ChangeCredit;
import icequill.document.Bill;
import icequill.document.CreditNote;
import icequill.document.InstallmentInvoice;
import icequill.document.Paper;
import icequill.document.StageInvoice;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperKind;
import icequill.office.writing.PaperIssuer;
import icequill.office.writing.PaperNumbers;
import icequill.papers.BilledVisit;
import icequill.papers.CreditAssembly;
import icequill.plans.WholeAgreement;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.CreditPart;
import icequill.shop.AgreementLoader;
import icequill.shop.BookForms;
import icequill.shop.BookedPapers;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The office that gives back what the book billed, and bills it anew where it was wrong. */
public final class CreditOffice {

    private final ShopBook book;
    private final PaperIssuer desk;

    private CreditOffice(ShopBook book) {
        this.book = book;
        this.desk = PaperIssuer.of(book);
    }

    public static CreditOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same with a book that may be held open. */
    public static CreditOffice of(ShopBook book) {
        return new CreditOffice(book);
    }

    /**
     * Issues the credit note of an invoice, and where asked the invoice in its place; both or none.
     *
     * @return the credit note, then the new invoice
     */
    public Validated<List<BookedPaper>> credit(String number, CreditOptions wish) {
        return pending(number, wish).then(wish.booking()::of);
    }

    /**
     * What the changes of an agreement leave to be given back of one of its payments.
     *
     * @param number of the payment's invoice
     * @param name of the agreement
     */
    public Validated<ChangeCredit> byChanges(String number, FormName name, LocalDate day) {
        return new AgreementLoader(BookForms.shop(book), new InvoicedPayments(book)::of).of(name, day)
                .then(hand -> book.read(open -> billing(open, number).then(billing -> creditedBefore(open,
                        billing.issued().number()).then(before -> byChanges(open, billing, hand, before)))));
    }

    private static Validated<ChangeCredit> byChanges(Reading open, Billing billing, WholeAgreement hand,
            List<CreditNote> before) {
        String number = billing.issued().number();
        String agreement = hand.request().number();
        if (billing.bill() instanceof InstallmentInvoice invoice && invoice.agreement().equals(agreement)) {
            return Validated.valid(ChangeCredit.of(number, invoice, hand, before,
                    site -> open.entries().siteNow(site).found().map(SiteEntry::id).orElse(site)));
        }
        return Validated
                .invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, number + " is no installment of " + agreement,
                        "the invoice of one of its installments"));
    }

    Validated<PendingWrite<List<BookedPaper>>> pending(String number, CreditOptions wish) {
        BookForms forms = new BookForms(book);
        return book.read(open -> billing(open, number)).then(billing -> wish.reissue()
                .map(asked -> CorrectedInvoice.of(forms, billing, asked, wish.date()).map(Optional::of))
                .orElse(Validated.valid(Optional.empty()))
                .map(instead -> new PendingWrite<>(book,
                        open -> forms.unchanged(open, () -> credit(open, billing, wish, instead)))));
    }

    private Validated<Billing> billing(Reading open, String number) {
        return PaperNumbers.find(open, number, EnumSet.of(PaperKind.INVOICE))
                .then(issued -> BookedPapers.paper(open, issued).then(paper -> {
                    if (paper instanceof Bill bill && !(bill instanceof CreditNote)) {
                        return Validated.valid(new Billing(issued, bill));
                    }
                    return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                            issued.number() + " is a " + BookedPaper.words(issued.series().kind()),
                            "the number of an invoice"));
                }));
    }

    private Validated<List<BookedPaper>> credit(Transaction open, Billing billing, CreditOptions wish,
            Optional<CorrectedInvoice> instead) {
        Validated<? extends Bill> free = billing.bill() instanceof StageInvoice part
                ? StageBilling.unlessUsed(open, part)
                : Validated.valid(billing.bill());
        return free.then(bill -> creditedBefore(open, billing.issued().number()))
                .then(before -> credit(open, billing, wish, instead, before));
    }

    private Validated<List<BookedPaper>> credit(Transaction open, Billing billing, CreditOptions wish,
            Optional<CorrectedInvoice> instead, List<CreditNote> before) {
        IssuedPaper invoice = billing.issued();
        if (instead.isPresent() && !before.isEmpty()) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                    "part of " + invoice.number() + " was given back already",
                    "give back the rest, and bill the visit anew: icequill invoice issue"));
        }
        CreditAssembly assembly = new CreditAssembly(billing.bill(),
                new CreditNote.Original(invoice.number(), invoice.date()), wish.reason(), wish.lines(), wish.part(),
                before);
        Problems problems = wrong(wish, invoice);
        problems.addAll(assembly.credit(Optional.empty(), wish.date()).problems());
        return problems.or(() -> wish)
                .then(valid -> issue(open, PaperKind.CREDIT_NOTE, wish,
                        invoice.origin().correcting(invoice.number()),
                        number -> assembly.credit(Optional.of(number), wish.date())))
                .map(credit -> BookedPaper.of(credit, open))
                .then(credit -> instead.map(other -> issue(open, PaperKind.INVOICE, wish,
                        origin(invoice, wish), number -> Validated.valid(other.bill(number)))
                        .map(paper -> List.of(credit, BookedPaper.of(paper, open))))
                        .orElseGet(() -> Validated.valid(List.of(credit))));
    }

    /** An invoice that is billed to another customer of the book is his. */
    private static Origin origin(IssuedPaper invoice, CreditOptions wish) {
        Origin origin = invoice.origin().replacing(invoice.number());
        return wish.reissue().flatMap(CreditOptions.Reissue::billTo).filter(customer -> !customer.isEmpty())
                .map(origin::billedTo).orElse(origin);
    }

    private Validated<IssuedPaper> issue(Transaction open, PaperKind kind, CreditOptions wish, Origin origin,
            Function<String, Validated<? extends Paper>> paper) {
        return new IssueDates(book).issue(open, kind, wish.date(), wish.booking().backdate(),
                () -> desk.issue(open, kind, wish.date(), origin, paper));
    }

    private static Problems wrong(CreditOptions wish, IssuedPaper invoice) {
        Problems problems = new Problems();
        if (wish.reason().isBlank()) {
            problems.add(Code.MISSING, Place.NOWHERE, "no reason is given", "--reason, printed for the customer");
        }
        CreditOptions.tooLong(wish.reason(), Place.NOWHERE).ifPresent(problems::add);
        if (wish.date().isBefore(invoice.date())) {
            problems.add(Code.WRONG_ORDER, Place.NOWHERE,
                    "dated " + wish.date() + ", but " + invoice.number() + " bears " + invoice.date(),
                    "that day or a later one");
        }
        if (wish.reissue().isPresent() && (!wish.lines().isEmpty() || wish.part() != CreditPart.Rest.REST)) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                    (wish.lines().isEmpty() ? "both a part" : "both lines") + " and a new invoice",
                    "a part alone, or the whole invoice issued anew");
        }
        return problems;
    }

    /** What a visit was billed at by an invoice, and what went back of it. */
    public static Validated<BilledVisit> billed(Reading open, IssuedPaper invoice, String visit) {
        return BookedPapers.paper(open, invoice).then(paper -> creditedBefore(open, invoice.number())
                .map(notes -> new BilledVisit((Bill) paper, visit, notes)));
    }

    private static Validated<List<CreditNote>> creditedBefore(Reading open, String number) {
        List<CreditNote> notes = new ArrayList<>();
        Problems problems = new Problems();
        for (IssuedPaper credit : open.papers().creditsOf(number)) {
            problems.take(BookedPapers.paper(open, credit).map(paper -> paper instanceof CreditNote note
                    ? notes.add(note)
                    : false));
        }
        return problems.or(() -> notes);
    }
}

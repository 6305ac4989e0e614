package icequill.office.demo;

import icequill.answer.BookedPaper;
import icequill.answer.WrittenPaper;
import icequill.document.MaintenanceQuote;
import icequill.document.PricedPaper;
import icequill.ledger.entries.VisitEntry;
import icequill.life.job.JobEvent;
import icequill.life.quote.AcceptanceWay;
import icequill.life.quote.QuoteEvent.Acceptance;
import icequill.office.billing.CreditOffice;
import icequill.office.billing.CreditOptions;
import icequill.office.billing.InvoicedPayments;
import icequill.office.billing.IssueOffice;
import icequill.office.billing.IssueOptions;
import icequill.office.billing.StandingInvoices;
import icequill.office.billing.VisitBilling;
import icequill.office.quoting.AgreementWish;
import icequill.office.quoting.JobOffice;
import icequill.office.quoting.QuoteLifeOffice;
import icequill.plans.WholeAgreement;
import icequill.problem.Validated;
import icequill.shop.AgreementLoader;
import icequill.shop.BookForms;
import icequill.shop.BookedPapers;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * What the invented shop issues into its book: the invoices of its visits, a credit note, an invoice issued anew, quotes, and
 * the first installments of its agreements.
 *
 * @param progress is told what comes next
 */
record DemoBook(ShopBook book, DemoEntries entries, Consumer<String> progress) {

    private static final int PAYMENTS = 2;
    private static final LocalDate AGREEMENT_DAY = LocalDate.of(2026, 5, 20);
    private static final LocalDate CREDIT_DAY = LocalDate.of(2026, 7, 10);
    private static final LocalDate QUOTE_DAY = LocalDate.of(2026, 5, 14);
    private static final String LATE_CALL = "late-call";
    private static final String WRONG_ORDER = "valve-repair-taproom";

    List<Validated<WrittenPaper>> papers() {
        List<Validated<WrittenPaper>> papers = new ArrayList<>();
        List<VisitEntry> visits = entries.visits();
        for (int i = 0; i < visits.size(); i++) {
            progress.accept("Invoice " + (i + 1) + " of " + visits.size() + ": " + visits.get(i).id());
            papers.add(VisitBilling.of(book)
                    .issue(new FormName.InBook(visits.get(i).id()), wish(DemoEntries.day(visits.get(i))))
                    .then(this::written));
        }
        progress.accept("Quotes");
        entries.quoted().forEach(
                name -> papers.add(IssueOffice.of(book).quote(name, wish(QUOTE_DAY)).then(this::written)));
        answers().map(answer -> answer.problems()).filter(problems -> !problems.isEmpty())
                .forEach(problems -> papers.add(new Validated.Invalid<>(problems)));
        progress.accept("Credit notes");
        evening().forEach(papers::add);
        reissued().forEach(papers::add);
        progress.accept("Installments of agreements");
        papers.addAll(payments(entries.agreements()));
        return papers;
    }

    /** The bakery took a plan, by the agreement that the book has; the taproom took its repair, and waits for the part. */
    private Stream<Validated<?>> answers() {
        QuoteLifeOffice quotes = QuoteLifeOffice.of(book);
        JobOffice jobs = JobOffice.of(book);
        return Stream.of(
                quotes.accept("MQ-2026-00001", yes(LocalDate.of(2026, 5, 20), Optional.of("quarterly"), "Jo Baker",
                        AcceptanceWay.SIGNED), AgreementWish.of("A-2026-004")),
                quotes.accept("RQ-2026-00001", yes(LocalDate.of(2026, 5, 18), Optional.empty(), "Dana Pell",
                        AcceptanceWay.TELEPHONE), AgreementWish.USUAL),
                jobs.note("RQ-2026-00001", new JobEvent.PartsOrdered(LocalDate.of(2026, 5, 18),
                        Optional.of("the maker's depot"), Optional.of(LocalDate.of(2026, 5, 27)))));
    }

    private static Acceptance yes(LocalDate day, Optional<String> plan, String name, AcceptanceWay way) {
        return new Acceptance(day, plan, Optional.of(name), Optional.empty(), Optional.empty(), Optional.empty(), way,
                false);
    }

    /** The evening hour of the late call given back: line 3, 159.25 and its tax. */
    private Stream<Validated<WrittenPaper>> evening() {
        return each(invoiceOf(LATE_CALL).then(number -> CreditOffice.of(book).credit(number,
                new CreditOptions(List.of(3),
                        "We promised to come by five and began late, so the evening rate is on us.", CREDIT_DAY,
                        Optional.empty()))));
    }

    private Validated<String> invoiceOf(String visit) {
        return book.read(open -> Validated.valid(StandingInvoices.visit(open, visit).orElse(visit)));
    }

    /** An invoice that named the wrong purchase order. */
    private Stream<Validated<WrittenPaper>> reissued() {
        Validated<List<BookedPaper>> papers = invoiceOf(WRONG_ORDER)
                .then(number -> CreditOffice.of(book).credit(number,
                        new CreditOptions(List.of(), "It named the wrong purchase order.", CREDIT_DAY,
                                Optional.of(new CreditOptions.Reissue(Optional.of("CK-1193"), Optional.empty(),
                                        CreditOptions.Due.RESTART)))));
        return each(papers);
    }

    /** One of an agreement's payments, and when it falls due. */
    private record Due(FormName agreement, int payment, LocalDate day) {}

    /** The payments that have fallen due, in the order of their days; the first ones are billed late. */
    private List<Validated<WrittenPaper>> payments(List<FormName> agreements) {
        LocalDate today = ShopDay.today(book.folder(), book.clock());
        List<Validated<WrittenPaper>> papers = new ArrayList<>();
        List<Due> due = new ArrayList<>();
        for (FormName agreement : agreements) {
            switch (new AgreementLoader(BookForms.shop(book), new InvoicedPayments(book)::of).of(agreement,
                    AGREEMENT_DAY)) {
            case Validated.Valid<WholeAgreement>(WholeAgreement hand) -> hand.payments().stream().limit(PAYMENTS)
                    .map(payment -> new Due(agreement, payment.number(), payment.due())).forEach(due::add);
            case Validated.Invalid<WholeAgreement> invalid -> papers.add(new Validated.Invalid<>(invalid.problems()));
            }
        }
        due.stream().filter(payment -> !payment.day().isAfter(today)).sorted(Comparator.comparing(Due::day))
                .map(payment -> IssueOffice.of(book).installment(payment.agreement(), payment.payment(),
                        wish(payment.day().isBefore(CREDIT_DAY) ? CREDIT_DAY : payment.day())).then(this::written))
                .forEach(papers::add);
        return papers;
    }

    private Stream<Validated<WrittenPaper>> each(Validated<List<BookedPaper>> papers) {
        return switch (papers) {
        case Validated.Valid<List<BookedPaper>>(List<BookedPaper> all) -> all.stream().map(this::written);
        case Validated.Invalid<List<BookedPaper>> invalid -> Stream.of(new Validated.Invalid<>(invalid.problems()));
        };
    }

    private Validated<WrittenPaper> written(BookedPaper paper) {
        return book.read(open -> open.papers().show(paper.number()).then(issued -> BookedPapers.paper(open, issued)))
                .map(data -> switch (data) {
                case PricedPaper priced ->
                    WrittenPaper.of(List.of(paper.file()), priced, List.of());
                case MaintenanceQuote quote -> WrittenPaper.of(List.of(paper.file()), quote,
                        quote.billTo().name(), List.of());
                default -> throw new IllegalStateException("not issued by the demo: " + paper.number());
                });
    }

    private static IssueOptions wish(LocalDate day) {
        return new IssueOptions(day, Optional.empty());
    }
}

package icequill.office.billing;

import icequill.agreement.Invoiced;
import icequill.document.InstallmentInvoice;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.AgreementRequest;
import icequill.shop.BookForms;
import icequill.shop.BookedPapers;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** Which invoices stand: those that were not given back in whole. */
public final class StandingInvoices {

    private StandingInvoices() {
    }

    /**
     * One of an agreement's payments.
     *
     * @param number from 1
     * @param before those that are to be billed before it
     * @param known the invoices it was worked out from; empty where it does not depend on any
     */
    record Payment(String agreement, int number, List<Integer> before, Optional<Invoiced> known) {
        Payment {
            before = List.copyOf(before);
        }
    }

    /** The number of the invoice of a visit that stands. */
    public static Optional<String> visit(Reading book, String visit) {
        return standing(book, book.papers().ofVisit(visit)).map(IssuedPaper::number).findFirst();
    }

    /** A problem when the payment has an invoice that stands, or one that comes before it has none. */
    static Validated<Boolean> unlessBilled(Reading book, Payment payment) {
        Map<Integer, String> billed = new HashMap<>();
        List<InstallmentInvoice> invoices = payments(book, payment.agreement()).toList();
        invoices.forEach(invoice -> billed.put(invoice.payment(), invoice.number().orElse("")));
        Problems problems = new Problems();
        Optional.ofNullable(billed.get(payment.number())).ifPresent(number -> problems.add(Code.ALREADY_EXISTS,
                Place.NOWHERE,
                "installment " + payment.number() + " of " + payment.agreement() + " was billed as " + number,
                "if that is wrong: icequill credit issue " + number));
        if (problems.isEmpty()) {
            payment.before().stream().filter(earlier -> !billed.containsKey(earlier)).findFirst()
                    .ifPresent(earlier -> problems.add(Code.WRONG_ORDER, Place.NOWHERE,
                            "installment " + earlier + " of " + payment.agreement() + " comes before installment "
                                    + payment.number() + " and is not billed yet",
                            "--installment " + earlier + ", or --out-of-order"));
        }
        if (problems.isEmpty() && payment.known().filter(known -> !known.equals(nets(invoices.stream())))
                .isPresent()) {
            problems.add(BookForms.changed("an invoice of " + payment.agreement()));
        }
        return problems.or(() -> true);
    }

    /** The invoices of an agreement's payments that stand. */
    static Stream<InstallmentInvoice> payments(Reading book, String agreement) {
        return invoices(book, standing(book, book.papers().ofAgreement(agreement)));
    }

    /** The nets at a site of an agreement's payments whose invoices stood when another paper was issued. */
    public static Invoiced netsBefore(Reading book, AgreementRequest agreement, String site, Instant moment) {
        return nets(book, invoices(book, book.papers().ofAgreement(agreement.number()).stream()
                .filter(paper -> paper.series().kind() == PaperKind.INVOICE && paper.issuedAt().isBefore(moment))
                .filter(paper -> !paper.isGivenBackBy(book.papers().creditsOf(paper.number()).stream()
                        .filter(credit -> credit.issuedAt().isBefore(moment)).toList()))),
                agreement, site);
    }

    /** The numbers of the invoices of an agreement's payments that stand, by payment. */
    public static Map<Integer, String> byPayment(Reading book, String agreement) {
        Map<Integer, String> numbers = new TreeMap<>();
        payments(book, agreement)
                .forEach(invoice -> numbers.put(invoice.payment(), invoice.number().orElseThrow()));
        return numbers;
    }

    private static Stream<InstallmentInvoice> invoices(Reading book, Stream<IssuedPaper> papers) {
        return papers.flatMap(
                paper -> BookedPapers.paper(book, paper) instanceof Validated.Valid<?>(InstallmentInvoice invoice)
                        ? Stream.of(invoice)
                        : Stream.empty());
    }

    /** The invoices that stand among papers with whatever corrects them. */
    public static List<IssuedPaper> among(List<IssuedPaper> papers) {
        return papers.stream().filter(paper -> paper.series().kind() == PaperKind.INVOICE)
                .filter(invoice -> !invoice.isGivenBackBy(papers.stream()
                        .filter(paper -> paper.origin().corrects().filter(invoice.number()::equals).isPresent())
                        .toList()))
                .toList();
    }

    private static Stream<IssuedPaper> standing(Reading book, List<IssuedPaper> papers) {
        return papers.stream().filter(paper -> paper.series().kind() == PaperKind.INVOICE)
                .filter(paper -> !paper.isGivenBackBy(book.papers().creditsOf(paper.number())));
    }

    /** At one of an agreement's sites, before tax, whatever credit notes gave back of them later. */
    static Invoiced nets(Reading book, Stream<InstallmentInvoice> invoices, AgreementRequest agreement, String site) {
        // What was billed while the agreement was over one site names none: it was for the one that is first now.
        boolean first = agreement.scope().site().equals(site);
        List<String> known = Stream.concat(Stream.of(site), book.entries().sitesMergedInto(site).stream()).toList();
        Map<Integer, MonetaryAmount> nets = new HashMap<>();
        invoices.forEach(invoice -> nets.put(invoice.payment(),
                first && (invoice.sites().isEmpty() || agreement.part().isEmpty())
                        ? invoice.totals().net()
                        : known.stream().map(invoice::netAt).reduce(MonetaryAmount::add).orElseThrow()));
        return new Invoiced(nets, done(book, agreement));
    }

    /** Days of visits, where each is paid when it is done and an end decides which are. */
    private static Set<LocalDate> done(Reading book, AgreementRequest agreement) {
        return agreement.ended().isPresent() && agreement.scope().billing().isEmpty()
                ? SlotVisits.done(book, agreement).stream().map(visit -> visit.began().toLocalDate())
                        .collect(Collectors.toSet())
                : Set.of();
    }

    private static Invoiced nets(Stream<InstallmentInvoice> invoices) {
        Map<Integer, MonetaryAmount> nets = new HashMap<>();
        invoices.forEach(invoice -> nets.put(invoice.payment(), invoice.totals().net()));
        return new Invoiced(nets);
    }
}

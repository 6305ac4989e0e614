package icequill.office;

import icequill.document.InstallmentInvoice;
import icequill.ledger.IssuedPaper;
import icequill.ledger.PaperKind;
import icequill.ledger.Reading;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** Which invoices stand: those that were not given back in whole. */
final class Billed {

    private Billed() {
    }

    /** One of an agreement's payments, from 1. */
    record Payment(String agreement, int number) {}

    /** The number of the invoice of a visit that stands. */
    static Optional<String> visit(Reading book, String visit) {
        return standing(book, book.papers().ofVisit(visit)).map(IssuedPaper::number).findFirst();
    }

    /** A problem when the payment has an invoice that stands. */
    static Checked<Boolean> unlessBilled(Reading book, Payment payment) {
        Optional<String> billed = payments(book, payment.agreement())
                .filter(invoice -> invoice.payment() == payment.number())
                .flatMap(invoice -> invoice.number().stream()).findFirst();
        return billed.map(number -> Checked.<Boolean>faulty(new Problem(Code.ALREADY_EXISTS, Place.NOWHERE,
                "payment " + payment.number() + " of " + payment.agreement() + " was billed as " + number,
                "if that is wrong: icequill credit " + number))).orElse(Checked.sound(true));
    }

    /** The invoices of an agreement's payments that stand. */
    static Stream<InstallmentInvoice> payments(Reading book, String agreement) {
        return standing(book, book.papers().ofAgreement(agreement))
                .flatMap(paper -> IssueOffice.paper(book, paper) instanceof Checked.Sound<?>(InstallmentInvoice invoice)
                        ? Stream.of(invoice)
                        : Stream.empty());
    }

    private static Stream<IssuedPaper> standing(Reading book, List<IssuedPaper> papers) {
        return papers.stream().filter(paper -> paper.series().kind() == PaperKind.INVOICE)
                .filter(paper -> !isGivenBack(paper, book.papers().creditsOf(paper.number())));
    }

    /** Whether credit notes give all of an invoice back. */
    static boolean isGivenBack(IssuedPaper invoice, List<IssuedPaper> credits) {
        return !credits.isEmpty() && invoice.gross().equals(credits.stream().flatMap(credit -> credit.gross().stream())
                .reduce(MonetaryAmount::add));
    }
}

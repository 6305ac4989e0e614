package icequill.answer;

import icequill.ledger.Reading;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.money.Amounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What was paid of an invoice, or paid back of a credit note.
 *
 * @param payments each with its share
 * @param open of an invoice what neither payments nor credit notes settled, zero or more; empty for a credit note, of which
 *     only the account tells what is left
 */
public record PaidSheet(List<Part> payments, MonetaryAmount paid, Optional<MonetaryAmount> open) {

    /** A payment, and what of it is for the bill. */
    public record Part(String id, LocalDate from, MonetaryAmount amount) {}

    public PaidSheet {
        payments = List.copyOf(payments);
    }

    /** Empty for a paper that asks for no money and gives none back. */
    public static Optional<PaidSheet> of(Reading book, IssuedPaper paper) {
        PaperKind kind = paper.series().kind();
        return paper.gross().filter(sum -> kind == PaperKind.INVOICE || kind == PaperKind.CREDIT_NOTE)
                .map(gross -> of(book, paper, gross));
    }

    private static PaidSheet of(Reading book, IssuedPaper paper, MonetaryAmount gross) {
        List<Part> parts = book.accounts().paymentsOf(paper.number()).stream()
                .flatMap(payment -> payment.shares().stream().filter(share -> share.bill().equals(paper.number()))
                        .map(share -> part(payment, share)))
                .toList();
        MonetaryAmount none = Amounts.zero(gross.getCurrency());
        MonetaryAmount paid = Amounts.sum(parts.stream().map(Part::amount).toList(), gross.getCurrency());
        MonetaryAmount left = gross.subtract(paid).subtract(Amounts.sum(book.papers().creditsOf(paper.number())
                .stream().flatMap(credit -> credit.gross().stream()).toList(), gross.getCurrency()));
        return new PaidSheet(parts, paid, paper.series().kind() == PaperKind.INVOICE
                ? Optional.of(Amounts.larger(none, left))
                : Optional.empty());
    }

    private static Part part(PaymentEntry payment, PaymentEntry.Share share) {
        return new Part(payment.id(), share.day(), share.amount());
    }

    private String name() {
        return open.isPresent() ? "paid" : "paidBack";
    }

    /** Names and values, for a table of text. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        payments.forEach(part -> rows.add(
                List.of("paidBy", part.id() + ", " + part.from() + ", " + Amounts.plain(part.amount()))));
        rows.add(List.of(name(), Amounts.plain(paid)));
        open.ifPresent(left -> rows.add(List.of("open", Amounts.plain(left))));
        return rows;
    }
}

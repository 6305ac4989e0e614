package icequill.answer;

import icequill.account.Account;
import icequill.account.Credited;
import icequill.account.Invoiced;
import icequill.account.Movement;
import icequill.account.Payment;
import icequill.account.Standing;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.ledger.Reading;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.money.Amounts;
import icequill.problem.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What was paid of an invoice, or paid back of a credit note.
 *
 * @param payments each with its share
 * @param discount what was taken off an invoice because it was paid early; empty where nothing was
 * @param open of an invoice what neither payments nor credit notes nor such a discount settled, zero or more; empty for a credit note, of which
 *     only the account tells what is left
 */
public record PaidSheet(List<Part> payments, MonetaryAmount paid, Optional<MonetaryAmount> discount,
        Optional<MonetaryAmount> open) {

    /** A payment, and what of it is for the bill. */
    public record Part(String id, LocalDate from, MonetaryAmount amount) {}

    public PaidSheet {
        payments = List.copyOf(payments);
    }

    /**
     * Empty for a paper that asks for no money and gives none back.
     *
     * @param data what is on it; empty where that cannot be read
     */
    public static Optional<PaidSheet> of(Reading book, IssuedPaper paper, Optional<Paper> data) {
        PaperKind kind = paper.series().kind();
        return paper.gross().filter(sum -> kind == PaperKind.INVOICE || kind == PaperKind.CREDIT_NOTE)
                .map(gross -> of(book, paper, gross, data.flatMap(PaidSheet::early)));
    }

    private static Optional<Invoiced.Early> early(Paper data) {
        return data instanceof PricedPaper priced ? priced.totals().takenEarly() : Optional.empty();
    }

    private static PaidSheet of(Reading book, IssuedPaper paper, MonetaryAmount gross,
            Optional<Invoiced.Early> early) {
        List<Part> parts = book.accounts().paymentsOf(paper.number()).stream()
                .flatMap(payment -> payment.shares().stream().filter(share -> share.bill().equals(paper.number()))
                        .map(share -> part(payment, share)))
                .toList();
        MonetaryAmount none = Amounts.zero(gross.getCurrency());
        MonetaryAmount paid = Amounts.sum(parts.stream().map(Part::amount).toList(), gross.getCurrency());
        List<IssuedPaper> credits = book.papers().creditsOf(paper.number());
        Optional<MonetaryAmount> discount = early.flatMap(offer -> discount(paper, gross, offer, parts, credits));
        MonetaryAmount left = gross.subtract(paid).subtract(discount.orElse(none)).subtract(Amounts.sum(
                credits.stream().flatMap(credit -> credit.gross().stream()).toList(), gross.getCurrency()));
        return new PaidSheet(parts, paid, discount, paper.series().kind() == PaperKind.INVOICE
                ? Optional.of(Amounts.larger(none, left))
                : Optional.empty());
    }

    private static Optional<MonetaryAmount> discount(IssuedPaper paper, MonetaryAmount gross, Invoiced.Early early,
            List<Part> parts, List<IssuedPaper> credits) {
        Place place = Place.ofFile(paper.number());
        Account account = new Account(gross.getCurrency(),
                List.of(new Invoiced(paper.number(), paper.date(), paper.due().orElse(paper.date()), gross,
                        Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(early), place)),
                credits.stream().map(credit -> new Credited(credit.number(), credit.date(),
                        credit.gross().orElseThrow(), Optional.of(paper.number()), List.of(), place)).toList(),
                parts.stream().map(part -> new Payment(part.from(), part.amount(), Optional.empty(),
                        List.of(new Payment.Share(paper.number(), part.from(), part.amount())), place)).toList());
        return Standing.of(account, LocalDate.MAX).movements().stream()
                .filter(movement -> movement.kind() == Movement.Kind.EARLY_PAYMENT)
                .map(movement -> movement.amount().negate()).findFirst();
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
        discount.ifPresent(off -> rows.add(List.of("discount", Amounts.plain(off))));
        open.ifPresent(left -> rows.add(List.of("open", Amounts.plain(left))));
        return rows;
    }
}

package icequill.answer.history;

import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A paper that was issued for a visit.
 *
 * @param gross what it comes to, negative for what a credit note gives back
 * @param corrects the invoice that a credit note gives back
 * @param replaces the invoice in whose place it was issued
 */
public record ToldPaper(String number, PaperKind kind, LocalDate date, Optional<MonetaryAmount> gross,
        Optional<String> corrects, Optional<String> replaces) {

    public static ToldPaper of(IssuedPaper paper) {
        boolean givesBack = paper.series().kind() == PaperKind.CREDIT_NOTE;
        return new ToldPaper(paper.number(), paper.series().kind(), paper.date(),
                paper.gross().map(sum -> givesBack ? sum.negate() : sum), paper.origin().corrects(),
                paper.origin().replaces());
    }

    /** Whether what it comes to is owed, or given back. */
    boolean isBill() {
        return kind == PaperKind.INVOICE || kind == PaperKind.CREDIT_NOTE;
    }
}

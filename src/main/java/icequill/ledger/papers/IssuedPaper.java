package icequill.ledger.papers;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A paper in the book.
 *
 * @param position in its series, from 1
 * @param due the last day to pay
 * @param gross what it comes to; empty for a paper without prices
 * @param text where it went: customer, store, address
 * @param pdfHash SHA-256 of the PDF, in hexadecimal digits
 * @param previousSeal of the paper before it in the series
 * @param seal of the paper, and through the one before of all earlier ones
 */
public record IssuedPaper(String number, Series series, int position, LocalDate date, Optional<LocalDate> due,
        Instant issuedAt, Origin origin, Optional<MonetaryAmount> gross, String text, String ratesVersion,
        String pdfHash, String previousSeal, String seal) {

    /** Whether credit notes of this invoice give all of it back. */
    public boolean isGivenBackBy(List<IssuedPaper> credits) {
        return !credits.isEmpty() && gross
                .equals(credits.stream().flatMap(credit -> credit.gross().stream()).reduce(MonetaryAmount::add));
    }
}

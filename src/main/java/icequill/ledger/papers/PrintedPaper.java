package icequill.ledger.papers;

import icequill.ledger.find.SearchKeys;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A paper that was printed under its number.
 *
 * @param date that it bears
 * @param due the last day to pay
 * @param sums of a paper with prices
 * @param json its full data
 * @param ratesVersion of the rates it was figured by; empty if none were used
 */
public record PrintedPaper(LocalDate date, Optional<LocalDate> due, Optional<Sums> sums, SearchKeys facts, String json,
        String ratesVersion, Pdf pdf) {

    /** The same in another file. */
    public PrintedPaper in(Pdf file) {
        return new PrintedPaper(date, due, sums, facts, json, ratesVersion, file);
    }
}

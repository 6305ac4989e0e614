package icequill.ledger;

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
public record Printed(LocalDate date, Optional<LocalDate> due, Optional<Sums> sums, Facts facts, String json,
        String ratesVersion, Pdf pdf) {}

package icequill.agreement;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * How long a term must be for a law to hold.
 *
 * @param unit days or months
 * @param reachedIsEnough whether a term of exactly this length is long enough
 */
public record MinimumLength(Of of, int number, ChronoUnit unit, boolean reachedIsEnough) {

    /** Which term is measured. */
    public enum Of {
        INITIAL, RENEWAL,
        /** Both together. */
        WHOLE
    }

    boolean isMetBy(RenewalTerms terms) {
        LocalDate from = of == Of.RENEWAL ? terms.begins() : terms.term().start();
        LocalDate end = of == Of.INITIAL ? terms.term().renewal() : terms.endOfRenewal();
        LocalDate needed = from.plus(number, unit);
        return end.isAfter(needed) || (reachedIsEnough && end.equals(needed));
    }
}

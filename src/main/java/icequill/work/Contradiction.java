package icequill.work;

import icequill.party.Wording;
import java.math.BigDecimal;

/**
 * Something written down at a machine that a label or a limit contradicts, so that no paper may vouch for it.
 *
 * @param chemical that it is about
 * @param found as it was written down: pH, ppm, minutes, or so much of the chemical's unit
 * @param limit that it passes, in the same unit; of {@link Kind#NOT_KEPT_APART} the full flushes that are needed
 * @param unit of a dose; the chemical's own
 */
public record Contradiction(Kind kind, Wording chemical, BigDecimal found, BigDecimal limit, Unit unit) {

    /** What is wrong. */
    public enum Kind {
        /** The water that drained after flushing was still acid. */
        STILL_ACID,
        /** More sanitizer than may stay unrinsed where food touches. */
        STRIP_TOO_STRONG, DOSE_ABOVE_LABEL, TOO_SHORT, TOO_LONG,
        /** Chlorine and what makes a poisonous gas of it, without flushes and a pH reading between them. */
        NOT_KEPT_APART
    }

    /** Drinking water has a pH from 6.5 on (40 CFR 143.3, from memory); what drains below that still holds acid. */
    public static final BigDecimal CLEAN_PH = new BigDecimal("6.5");
}

package icequill.request;

import icequill.money.Percent;
import java.math.BigDecimal;

/** What of the lines that a credit note names goes back. */
public sealed interface CreditPart {

    /** All that is left of them. */
    enum Rest implements CreditPart {
        REST
    }

    /**
     * So much before tax and after a document discount, shared over the lines by what is left of each.
     *
     * @param amount as it was written
     */
    record OfAmount(BigDecimal amount) implements CreditPart {}

    /** A part of what each of them was billed at. */
    record OfPercent(Percent percent) implements CreditPart {}

    /**
     * So many of one line that has a price for one.
     *
     * @param number in the unit that the line is counted in
     */
    record OfQuantity(BigDecimal number) implements CreditPart {}
}

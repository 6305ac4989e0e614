package icequill.einvoice;

import icequill.money.Percent;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * An allowance or a charge, on a line (BG-27) or on the document (BG-20, BG-21).
 *
 * @param code of UNTDID 5189 for an allowance, 7161 for a charge
 * @param reason in words
 * @param figured what a charge is a percentage of; empty for an allowance, and where parts of it are of other amounts
 * @param category empty on a line, which has its own
 */
record Adjustment(boolean isCharge, MonetaryAmount amount, String code, String reason, Optional<Base> figured,
        Optional<Category> category) {

    /** What a charge is a percentage of. */
    record Base(MonetaryAmount amount, Percent percent) {}

    static Adjustment allowance(MonetaryAmount amount, String code, String reason, Optional<Category> category) {
        return new Adjustment(false, amount, code, reason, Optional.empty(), category);
    }

    static Adjustment charge(MonetaryAmount amount, String code, String reason, Optional<Base> figured,
            Category category) {
        return new Adjustment(true, amount, code, reason, figured, Optional.of(category));
    }
}

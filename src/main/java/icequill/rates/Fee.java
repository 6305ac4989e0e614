package icequill.rates;

import icequill.money.Percent;
import icequill.party.Wording;
import icequill.work.ChargeClass;
import java.util.Optional;
import java.util.Set;
import javax.money.MonetaryAmount;

/**
 * Something that a visit pays beside its lines.
 *
 * @param chargeClass the class it is itself, for tax
 * @param applies where and when
 */
public record Fee(String id, Wording name, ChargeClass chargeClass, Amount amount, Applies applies) {

    /** How much it is. */
    public sealed interface Amount {}

    /**
     * An amount.
     *
     * @param under only where what is charged comes to less
     */
    public record Flat(MonetaryAmount amount, Optional<MonetaryAmount> under) implements Amount {}

    /**
     * A part of the discounted nets of some classes, rounded before its limits.
     *
     * @param floor the least
     * @param cap the most
     */
    public record Part(Percent percent, Set<ChargeClass> on, Optional<MonetaryAmount> floor,
            Optional<MonetaryAmount> cap) implements Amount {
        public Part {
            on = Set.copyOf(on);
        }
    }
}

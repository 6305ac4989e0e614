package icequill.tax;

import icequill.explain.Explanation;
import icequill.money.Percent;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * A part of the price of a work that is asked for by itself.
 *
 * @param share of the price
 * @param net before tax, with what is held back of it
 * @param taxes that are asked for with it
 * @param held back of the net; negative where it is released
 * @param due net and tax less what is held back
 * @param how what is due was figured
 */
public record Stage(Kind kind, Percent share, MonetaryAmount net, List<TaxTotal> taxes, MonetaryAmount tax,
        MonetaryAmount held, MonetaryAmount due, Explanation how) {

    /** What a part is. */
    public enum Kind {
        /** Before the work begins. */
        DEPOSIT,
        /** The whole less what was asked for before. */
        FINAL,
        /** While the work goes on. */
        PROGRESS,
        /** What was held back. */
        RELEASE
    }

    public Stage {
        taxes = List.copyOf(taxes);
    }
}

package icequill.outlook;

import icequill.explain.Figure;
import java.math.BigDecimal;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** How many calls a plan's price would pay for. */
final class BreakEven {

    private BreakEven() {
    }

    /** The fewest calls that cost at least as much as a price; empty where no number does. */
    static Optional<Integer> calls(MonetaryAmount price, MonetaryAmount call) {
        return call.isPositive()
                ? Optional.of(new Figure.RaisedTo(quotient(price, call), BigDecimal.ONE).exact().intValue())
                : Optional.empty();
    }

    static Figure quotient(MonetaryAmount price, MonetaryAmount call) {
        return Figure.price(price, "").over(Figure.price(call, ""));
    }
}

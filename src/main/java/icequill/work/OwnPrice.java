package icequill.work;

import icequill.money.Percent;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** The price for one of something that no rates know; none of its amounts is negative. */
public sealed interface OwnPrice {

    /**
     * A price as it was written down.
     *
     * @param cost what one costs the shop; empty where nobody said
     */
    record Given(MonetaryAmount price, Optional<MonetaryAmount> cost) implements OwnPrice {}

    /**
     * A price that follows from the cost.
     *
     * @param markup zero for what is passed on at cost
     */
    record MarkedUp(MonetaryAmount cost, Percent markup) implements OwnPrice {}
}

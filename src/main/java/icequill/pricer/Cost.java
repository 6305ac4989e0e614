package icequill.pricer;

import icequill.explain.Explanation;
import javax.money.MonetaryAmount;

/** What a line costs the shop, with the rate it was priced from by file and line. Never shown to a customer. */
public record Cost(MonetaryAmount amount, Explanation how) {}

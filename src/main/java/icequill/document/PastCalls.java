package icequill.document;

import icequill.explain.Explanation;
import javax.money.MonetaryAmount;

/**
 * The calls that a site had in the last twelve months, and what so many would cost today, before tax.
 *
 * @param calls from 0
 * @param each what one of the kind that the customer described costs at list
 * @param together all of them
 */
public record PastCalls(int calls, MonetaryAmount each, MonetaryAmount together, Explanation how) {}

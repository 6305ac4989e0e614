package icequill.document;

import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a customer gets for the price of a way of care in the first year, so that all ways are compared for the same.
 *
 * @param visits that are planned
 * @param fullCleanings of the visits
 * @param filters visits on which the water filters are changed; empty where each cleaning carries its part of the filters of a year
 * @param readings visits on which readings are taken
 * @param includedCalls that its price includes
 * @param catchUp what catching up on neglected machines adds, once; zero where there is nothing to catch up on, or nothing planned
 * @param doCallsClean whether a call also cleans or brushes what stopped
 */
public record CareOptionScope(int visits, int fullCleanings, Optional<Integer> filters, int readings, int includedCalls,
        MonetaryAmount catchUp, boolean doCallsClean) {}

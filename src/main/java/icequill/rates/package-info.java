/**
 * The shop's dated prices; enter at {@link icequill.rates.RateSchedule}, which
 * binds them to a day as plain {@link icequill.rates.Rates}.
 */
@NullMarked
package icequill.rates;

import org.jspecify.annotations.NullMarked;

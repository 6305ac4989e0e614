/**
 * The shop's dated prices; {@link icequill.rates.RateSchedule#asOf} binds them to a day as plain {@link icequill.rates.Rates}.
 */
@NullMarked
package icequill.rates;

import org.jspecify.annotations.NullMarked;

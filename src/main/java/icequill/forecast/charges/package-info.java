/**
 * What stops cost: distributions of sums of so many charges; enter at {@link icequill.forecast.charges.ChargeDistribution}.
 */
@NullMarked
package icequill.forecast.charges;

import org.jspecify.annotations.NullMarked;

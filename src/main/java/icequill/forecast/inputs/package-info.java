/**
 * What a forecast is figured from: the shop's estimates for any site, and what is known of one; enter at
 * {@link icequill.forecast.inputs.ForecastRates}.
 */
@NullMarked
package icequill.forecast.inputs;

import org.jspecify.annotations.NullMarked;

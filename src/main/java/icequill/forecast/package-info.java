/**
 * What to expect when machines are cleaned often, seldom or never: how many calls and what they cost, as distributions,
 * and the cheapest interval; enter at {@link icequill.forecast.Forecast}. Chances and months are {@code double}; money is whole
 * minor units or amounts, rounded once by a named rounding.
 */
@NullMarked
package icequill.forecast;

import org.jspecify.annotations.NullMarked;

/**
 * What to expect when machines are cleaned often, seldom or never: how many calls, and what they cost, as distributions; enter
 * at {@link icequill.forecast.Forecast}. Chances and months are {@code double}; money is whole minor units.
 */
@NullMarked
package icequill.forecast;

import org.jspecify.annotations.NullMarked;

/**
 * How often machines stop: the life of a side by its dirt, its cleanings and the stops that come of both, as distributions of counts;
 * enter at {@link icequill.forecast.stops.StopCounts}.
 */
@NullMarked
package icequill.forecast.stops;

import org.jspecify.annotations.NullMarked;

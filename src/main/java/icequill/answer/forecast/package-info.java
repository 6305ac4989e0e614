/**
 * What is to be expected of a site, in figures; enter at {@link icequill.answer.forecast.ForecastFigures}.
 */
@NullMarked
package icequill.answer.forecast;

import org.jspecify.annotations.NullMarked;

/**
 * How soon dirt stops machines, fitted to recorded runs by maximum likelihood; enter at
 * {@link icequill.forecast.fit.WeibullFit}.
 */
@NullMarked
package icequill.forecast.fit;

import org.jspecify.annotations.NullMarked;

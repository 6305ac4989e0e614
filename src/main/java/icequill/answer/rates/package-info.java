/**
 * What is told of versions of the rates; enter at {@link icequill.answer.rates.RatesList}.
 */
@NullMarked
package icequill.answer.rates;

import org.jspecify.annotations.NullMarked;

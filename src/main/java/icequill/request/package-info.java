/**
 * What is asked for, as it was handed over: a quote, an agreement, a credit, a brushing sheet; enter at
 * {@link icequill.request.PlanRequest}.
 */
@NullMarked
package icequill.request;

import org.jspecify.annotations.NullMarked;

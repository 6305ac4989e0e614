/**
 * The ways of looking after a site priced, and an agreement through its changes; enter at
 * {@link icequill.plans.PlanContext}.
 */
@NullMarked
package icequill.plans;

import org.jspecify.annotations.NullMarked;

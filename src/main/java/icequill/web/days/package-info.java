/**
 * Pages about visits to come; enter at {@link icequill.web.days.DueVisitsPage}.
 */
@NullMarked
package icequill.web.days;

import org.jspecify.annotations.NullMarked;

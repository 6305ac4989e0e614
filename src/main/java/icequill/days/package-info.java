/**
 * Visits that are due, and the days and hours proposed for them; enter at {@link icequill.days.DueVisit}.
 */
@NullMarked
package icequill.days;

import org.jspecify.annotations.NullMarked;

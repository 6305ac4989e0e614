/**
 * Visits that are due, the days proposed for them, and what visits took; enter at {@link icequill.answer.days.DueSheet}.
 */
@NullMarked
package icequill.answer.days;

import org.jspecify.annotations.NullMarked;

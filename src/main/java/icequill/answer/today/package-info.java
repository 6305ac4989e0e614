/**
 * What waits for somebody on a day; enter at {@link icequill.answer.today.DaySheet}.
 */
@NullMarked
package icequill.answer.today;

import org.jspecify.annotations.NullMarked;

/** Minutes that visits took against what was planned, for the owner; enter at {@link icequill.answer.minutes.MinutesSheet}. */
@NullMarked
package icequill.answer.minutes;

import org.jspecify.annotations.NullMarked;

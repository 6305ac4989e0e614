/**
 * Minutes that visits took against those that were planned, and what they say of the minutes of tasks; enter at
 * {@link icequill.outlook.minutes.WorkedMinutes}.
 */
@NullMarked
package icequill.outlook.minutes;

import org.jspecify.annotations.NullMarked;

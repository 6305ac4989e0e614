/**
 * What was done: visits, their lines, tasks, machine states, doses, and time split over labor bands; enter at
 * {@link icequill.work.Visit}.
 */
@NullMarked
package icequill.work;

import org.jspecify.annotations.NullMarked;

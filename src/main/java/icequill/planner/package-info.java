/**
 * The shortest safe timetable for a visit: when each task begins, and who does it; enter at
 * {@link icequill.planner.Planner}.
 *
 * <p>
 * A machine is led through its states in the order of its tasks. People are alike, are in one place at a time and walk between
 * machines. All times are whole minutes from the beginning of the visit.
 */
@NullMarked
package icequill.planner;

import org.jspecify.annotations.NullMarked;

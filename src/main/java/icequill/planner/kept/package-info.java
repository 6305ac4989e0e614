/**
 * Timetables that were found before, so that nobody searches again for what is the same; enter at
 * {@link icequill.planner.kept.KeptTimetables}.
 */
@NullMarked
package icequill.planner.kept;

import org.jspecify.annotations.NullMarked;

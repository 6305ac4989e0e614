/**
 * Papers made from files and not booked: each use case reads, runs the pure packages, and hands back what was made or all
 * that was wrong; enter at {@link icequill.office.Office}.
 */
@NullMarked
package icequill.office;

import org.jspecify.annotations.NullMarked;

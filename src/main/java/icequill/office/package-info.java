/**
 * The use cases: each takes files and wishes, runs the pure packages, and hands back what was made or everything that was
 * wrong; enter at {@link icequill.office.Office}.
 */
@NullMarked
package icequill.office;

import org.jspecify.annotations.NullMarked;

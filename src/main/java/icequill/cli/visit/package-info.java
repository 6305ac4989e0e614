/**
 * Commands for visits and calls; enter at {@link icequill.cli.visit.VisitCommand}.
 */
@NullMarked
package icequill.cli.visit;

import org.jspecify.annotations.NullMarked;

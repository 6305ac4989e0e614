/**
 * The commands that plan visits ahead; enter at {@link icequill.cli.days.VisitDueCommand}.
 */
@NullMarked
package icequill.cli.days;

import org.jspecify.annotations.NullMarked;

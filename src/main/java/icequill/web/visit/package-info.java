/**
 * The pages of visits: looked for, looked at, entered, corrected, billed; enter at {@link icequill.web.visit.VisitEntry}.
 */
@NullMarked
package icequill.web.visit;

import org.jspecify.annotations.NullMarked;

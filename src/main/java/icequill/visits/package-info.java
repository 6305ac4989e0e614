/**
 * A visit with its site and the rates of its day: priced, taxed, planned, as steps; enter at
 * {@link icequill.visits.VisitContext}.
 */
@NullMarked
package icequill.visits;

import org.jspecify.annotations.NullMarked;

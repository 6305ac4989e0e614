/**
 * The trail: who changed what in the book, and when, sealed row by row; enter at {@link icequill.ledger.trail.Trail}.
 */
@NullMarked
package icequill.ledger.trail;

import org.jspecify.annotations.NullMarked;

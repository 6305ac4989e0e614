/**
 * The shop's book: who is looked after, and every paper that was issued, with numbers without gaps; enter at
 * {@link icequill.ledger.Opening}.
 */
@NullMarked
package icequill.ledger;

import org.jspecify.annotations.NullMarked;

/**
 * Papers of the book: series, seals, rows and files; enter at {@link icequill.ledger.papers.Papers}.
 */
@NullMarked
package icequill.ledger.papers;

import org.jspecify.annotations.NullMarked;

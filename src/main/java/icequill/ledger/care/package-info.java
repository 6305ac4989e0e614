/**
 * Looks after the book: audits, backups, restores; enter at {@link icequill.ledger.care.Audit}.
 */
@NullMarked
package icequill.ledger.care;

import org.jspecify.annotations.NullMarked;

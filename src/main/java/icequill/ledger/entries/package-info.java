/**
 * Customers, sites, machines and visits of the book; enter at {@link icequill.ledger.entries.Entries}.
 */
@NullMarked
package icequill.ledger.entries;

import org.jspecify.annotations.NullMarked;

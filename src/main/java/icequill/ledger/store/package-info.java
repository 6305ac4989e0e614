/**
 * The database below the book: connections, tables, who may write, and what its errors mean; enter at
 * {@link icequill.ledger.store.Connections}.
 */
@NullMarked
package icequill.ledger.store;

import org.jspecify.annotations.NullMarked;

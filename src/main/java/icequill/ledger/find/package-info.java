/**
 * Looks for papers by words and facts; enter at {@link icequill.ledger.find.Finder}.
 */
@NullMarked
package icequill.ledger.find;

import org.jspecify.annotations.NullMarked;

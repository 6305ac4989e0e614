/**
 * What lives in a shop's book, told from its steps; enter at {@link icequill.shop.life.QuoteLife}.
 */
@NullMarked
package icequill.shop.life;

import org.jspecify.annotations.NullMarked;

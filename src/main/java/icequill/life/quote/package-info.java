/**
 * What becomes of a quote: issued, accepted or declined; that it lapsed is told by its last day; enter at
 * {@link icequill.life.quote.QuoteState#step}.
 */
@NullMarked
package icequill.life.quote;

import org.jspecify.annotations.NullMarked;

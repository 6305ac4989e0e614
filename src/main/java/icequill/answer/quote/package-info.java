/**
 * Maintenance that is offered: what may be chosen, what it comes to, and what was issued; enter at
 * {@link icequill.answer.quote.QuoteSheet}.
 */
@NullMarked
package icequill.answer.quote;

import org.jspecify.annotations.NullMarked;

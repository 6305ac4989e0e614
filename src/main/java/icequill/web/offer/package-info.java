/**
 * Quotes in a browser: made while the customer waits, and found again; enter at {@link icequill.web.offer.QuoteEntryPage}.
 */
@NullMarked
package icequill.web.offer;

import org.jspecify.annotations.NullMarked;

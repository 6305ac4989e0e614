/**
 * Commands that price work and offer it; enter at {@link icequill.cli.offer.QuoteCommand}.
 */
@NullMarked
package icequill.cli.offer;

import org.jspecify.annotations.NullMarked;

/**
 * Papers that were issued, found, printed again or copied; enter at {@link icequill.answer.paper.IssuedPapers}.
 */
@NullMarked
package icequill.answer.paper;

import org.jspecify.annotations.NullMarked;

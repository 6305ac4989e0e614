/**
 * Every amount of a paper, by its kind; enter at {@link icequill.answer.amounts.PaperAmounts}.
 */
@NullMarked
package icequill.answer.amounts;

import org.jspecify.annotations.NullMarked;

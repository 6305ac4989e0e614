/**
 * What a use case hands back, for the terminal and as JSON; enter at {@link icequill.answer.WrittenPaper}.
 */
@NullMarked
package icequill.answer;

import org.jspecify.annotations.NullMarked;

/**
 * Answers as JSON; enter at {@link icequill.files.answer.AnswerMapper}.
 */
@NullMarked
package icequill.files.answer;

import org.jspecify.annotations.NullMarked;

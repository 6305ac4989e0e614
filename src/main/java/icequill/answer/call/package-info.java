/**
 * Calls as they are told, and what is at hand while one is taken; enter at {@link icequill.answer.call.CallSheet}.
 */
@NullMarked
package icequill.answer.call;

import org.jspecify.annotations.NullMarked;

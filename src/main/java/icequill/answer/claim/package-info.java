/**
 * Claims for work under a warranty; enter at {@link icequill.answer.claim.ClaimSheet}.
 */
@NullMarked
package icequill.answer.claim;

import org.jspecify.annotations.NullMarked;

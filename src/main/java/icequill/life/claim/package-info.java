/**
 * What becomes of a claim for work under a warranty: noted, sent, paid or refused; enter at
 * {@link icequill.life.claim.ClaimState#step}.
 */
@NullMarked
package icequill.life.claim;

import org.jspecify.annotations.NullMarked;

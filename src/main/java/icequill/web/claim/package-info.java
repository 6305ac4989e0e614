/**
 * The pages of claims for work under a warranty; enter at {@link icequill.web.claim.ClaimsPage}.
 */
@NullMarked
package icequill.web.claim;

import org.jspecify.annotations.NullMarked;

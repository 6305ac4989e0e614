/**
 * Commands on claims for work under a warranty; enter at {@link icequill.cli.claim.ClaimCommand}.
 */
@NullMarked
package icequill.cli.claim;

import org.jspecify.annotations.NullMarked;

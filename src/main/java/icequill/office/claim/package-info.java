/**
 * Claims for work under a warranty, from the visit to the payer's answer; enter at
 * {@link icequill.office.claim.ClaimOffice}.
 */
@NullMarked
package icequill.office.claim;

import org.jspecify.annotations.NullMarked;

/**
 * The parties to a job: shop, customer, site and machine, with what is dated about them; enter at
 * {@link icequill.party.Site}.
 */
@NullMarked
package icequill.party;

import org.jspecify.annotations.NullMarked;

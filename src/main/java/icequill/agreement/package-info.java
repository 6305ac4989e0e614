/**
 * Maintenance agreements: tiers and their slots, terms, visit dates, installments, renewal prices and notice windows; enter
 * at {@link icequill.agreement.Tier}.
 */
@NullMarked
package icequill.agreement;

import org.jspecify.annotations.NullMarked;

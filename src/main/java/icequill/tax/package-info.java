/**
 * Turns priced lines, the rules of a place and certificates into taxed totals; enter at
 * {@link icequill.tax.TaxCalculator}.
 */
@NullMarked
package icequill.tax;

import org.jspecify.annotations.NullMarked;

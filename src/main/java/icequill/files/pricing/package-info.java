/**
 * Reads a shop's price files into dated rates, tax and notice rules; enter at
 * {@link icequill.files.pricing.PricingReader}.
 */
@NullMarked
package icequill.files.pricing;

import org.jspecify.annotations.NullMarked;

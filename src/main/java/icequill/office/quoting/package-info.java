/**
 * Maintenance quotes that are typed while the customer waits; enter at {@link icequill.office.quoting.QuoteOffice}.
 */
@NullMarked
package icequill.office.quoting;

import org.jspecify.annotations.NullMarked;

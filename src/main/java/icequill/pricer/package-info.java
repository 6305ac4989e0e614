/**
 * Turns a visit and the rates of its day into priced, explained lines; enter at {@link icequill.pricer.Pricer}.
 */
@NullMarked
package icequill.pricer;

import org.jspecify.annotations.NullMarked;

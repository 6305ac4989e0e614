/**
 * Customers, sites and machines added, changed, listed, taken in from lists, forgotten; enter at
 * {@link icequill.office.register.RegisterOffice}.
 */
@NullMarked
package icequill.office.register;

import org.jspecify.annotations.NullMarked;

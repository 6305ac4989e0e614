/**
 * The log of refrigerant; enter at {@link icequill.office.refrigerant.RefrigerantOffice}.
 */
@NullMarked
package icequill.office.refrigerant;

import org.jspecify.annotations.NullMarked;

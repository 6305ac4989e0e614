/**
 * What was done with refrigerant; enter at {@link icequill.answer.refrigerant.RefrigerantSheet}.
 */
@NullMarked
package icequill.answer.refrigerant;

import org.jspecify.annotations.NullMarked;

/**
 * The pages on refrigerant; enter at {@link icequill.web.refrigerant.RefrigerantPage}.
 */
@NullMarked
package icequill.web.refrigerant;

import org.jspecify.annotations.NullMarked;

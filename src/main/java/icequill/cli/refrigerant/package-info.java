/**
 * The commands on refrigerant; enter at {@link icequill.cli.refrigerant.RefrigerantCommand}.
 */
@NullMarked
package icequill.cli.refrigerant;

import org.jspecify.annotations.NullMarked;

/**
 * What was added to machines and recovered from them, and how fast they leak; enter at {@link icequill.life.refrigerant.MachineLog}.
 */
@NullMarked
package icequill.life.refrigerant;

import org.jspecify.annotations.NullMarked;

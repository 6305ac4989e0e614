/**
 * A call through its life: taken, planned, done and closed, or withdrawn; enter at {@link icequill.life.call.CallLife}.
 */
@NullMarked
package icequill.life.call;

import org.jspecify.annotations.NullMarked;

/**
 * Whether a customer was told of a visit to come; enter at {@link icequill.life.telling.Tellings#state}.
 */
@NullMarked
package icequill.life.telling;

import org.jspecify.annotations.NullMarked;

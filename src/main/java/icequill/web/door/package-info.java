/**
 * Who may come in: only who has the link of this start, from this machine, by this machine's name; enter at
 * {@link icequill.web.door.Doorkeeper}.
 */
@NullMarked
package icequill.web.door;

import org.jspecify.annotations.NullMarked;

/**
 * The office where calls are taken and looked after; enter at {@link icequill.office.call.CallOffice}.
 */
@NullMarked
package icequill.office.call;

import org.jspecify.annotations.NullMarked;

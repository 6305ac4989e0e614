/**
 * Pages of calls; enter at {@link icequill.web.call.CallPage}.
 */
@NullMarked
package icequill.web.call;

import org.jspecify.annotations.NullMarked;

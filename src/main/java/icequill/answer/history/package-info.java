/**
 * Visits as lists and histories tell them; enter at {@link icequill.answer.history.SiteHistory}.
 */
@NullMarked
package icequill.answer.history;

import org.jspecify.annotations.NullMarked;

/**
 * Papers of the book looked at and printed again, the book audited and kept, a shop checked; enter at
 * {@link icequill.office.care.BookMaintenance}.
 */
@NullMarked
package icequill.office.care;

import org.jspecify.annotations.NullMarked;

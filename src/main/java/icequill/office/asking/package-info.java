/**
 * A visit typed by asking: questions and answers without a terminal; enter at {@link icequill.office.asking.AskingOffice}.
 */
@NullMarked
package icequill.office.asking;

import org.jspecify.annotations.NullMarked;

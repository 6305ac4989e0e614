/**
 * Mails put into words: to whom, what they say, what goes along; enter at {@link icequill.office.letters.LooseMails} for papers without a number.
 */
@NullMarked
package icequill.office.letters;

import org.jspecify.annotations.NullMarked;

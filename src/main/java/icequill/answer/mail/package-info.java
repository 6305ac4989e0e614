/**
 * Mails by which papers go out; enter at {@link icequill.answer.mail.MailSheet}.
 */
@NullMarked
package icequill.answer.mail;

import org.jspecify.annotations.NullMarked;

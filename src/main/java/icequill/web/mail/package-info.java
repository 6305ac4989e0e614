/**
 * The pages of mails; enter at {@link icequill.web.mail.MailPage}.
 */
@NullMarked
package icequill.web.mail;

import org.jspecify.annotations.NullMarked;

/**
 * The commands on mails; enter at {@link icequill.cli.mail.MailCommand}.
 */
@NullMarked
package icequill.cli.mail;

import org.jspecify.annotations.NullMarked;

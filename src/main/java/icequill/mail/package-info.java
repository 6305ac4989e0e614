/**
 * Mail out by SMTP or as a draft, and mail that came back; enter at {@link icequill.mail.Outgoing}, {@link icequill.mail.EmlDraft} and
 * {@link icequill.mail.ReturnedMail}.
 */
@NullMarked
package icequill.mail;

import org.jspecify.annotations.NullMarked;

/**
 * Papers out by mail: written, sent, returned; enter at {@link icequill.office.mail.MailOffice} and
 * {@link icequill.office.mail.SendingOffice}.
 */
@NullMarked
package icequill.office.mail;

import org.jspecify.annotations.NullMarked;

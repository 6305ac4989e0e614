/**
 * What becomes of a mail: it waits, is sent, refused, returned, or nobody knows; enter at {@link icequill.life.mail.MailState#step}.
 */
@NullMarked
package icequill.life.mail;

import org.jspecify.annotations.NullMarked;

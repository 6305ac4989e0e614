package icequill.office.mail;

import icequill.life.mail.MailCopy;
import icequill.mail.MailMessage;

/** A mail as it goes out, and what of it is kept. */
record WrittenMail(MailMessage message, MailCopy copy) {}

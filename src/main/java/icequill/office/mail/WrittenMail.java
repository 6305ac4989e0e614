package icequill.office.mail;

import icequill.life.mail.MailCopy;
import icequill.mail.Enclosure;
import icequill.mail.MailAddress;
import icequill.mail.MailContent;
import icequill.mail.MailMessage;
import icequill.mail.MailParties;
import java.time.ZonedDateTime;

/** A mail as it goes out, and what of it is kept. */
record WrittenMail(MailMessage message, MailCopy copy) {

    static WrittenMail of(String messageId, MailParties parties, MailContent content, ZonedDateTime now) {
        return new WrittenMail(new MailMessage(parties, content, messageId, now), copy(parties, content));
    }

    private static MailCopy copy(MailParties parties, MailContent content) {
        return new MailCopy(parties.to().stream().map(WrittenMail::shown).toList(), content.subject(),
                content.text(), content.enclosures().stream().map(Enclosure::name).toList());
    }

    private static String shown(MailAddress address) {
        return address.name().map(name -> name + " <" + address.text() + ">").orElse(address.text());
    }
}

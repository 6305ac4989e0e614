package icequill.office.letters;

import icequill.life.mail.MailCopy;
import icequill.mail.Enclosure;
import icequill.mail.MailAddress;
import icequill.mail.MailContent;
import icequill.mail.MailMessage;
import icequill.mail.MailParties;
import icequill.problem.Place;
import icequill.problem.Validated;
import icequill.shop.life.MailLife;
import java.time.ZonedDateTime;
import java.util.List;

/** A mail as it goes out, and what of it is kept. */
public record WrittenMail(MailMessage message, MailCopy copy) {

    /**
     * What goes along with the text.
     *
     * @param standing titles of papers of the shop that are among the files
     * @param bill whether the paper asks for money
     */
    public record Along(List<Enclosure> files, List<String> standing, boolean bill) {}

    /** A mail in the words of its paper, or what is wrong with them. */
    public static Validated<WrittenMail> of(MailLife mail, MailText text, MailParties parties, Along along,
            ZonedDateTime now) {
        List<String> names = parties.to().stream().flatMap(address -> address.name().stream()).toList();
        return MailContent.of(text.words().formats().language(), text.subject(),
                text.text(names, along.standing(), along.bill()), along.files(), Place.NOWHERE)
                .map(content -> new WrittenMail(new MailMessage(parties, content, mail.messageId(), now),
                        copy(parties, content)));
    }

    private static MailCopy copy(MailParties parties, MailContent content) {
        return new MailCopy(parties.to().stream().map(WrittenMail::shown).toList(), content.subject(),
                content.text(), content.enclosures().stream().map(Enclosure::name).toList());
    }

    private static String shown(MailAddress address) {
        return address.name().map(name -> name + " <" + address.text() + ">").orElse(address.text());
    }
}

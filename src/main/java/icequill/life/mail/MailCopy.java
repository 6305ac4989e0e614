package icequill.life.mail;

import java.util.List;

/**
 * What a mail says.
 *
 * @param to addresses, with names where they are known
 * @param files names of what is enclosed, in order
 */
public record MailCopy(List<String> to, String subject, String text, List<String> files) {

    public MailCopy {
        to = List.copyOf(to);
        files = List.copyOf(files);
    }
}

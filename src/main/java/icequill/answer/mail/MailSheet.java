package icequill.answer.mail;

import icequill.explain.ConstantKey;
import icequill.life.mail.MailCopy;
import icequill.problem.Problem;
import icequill.shop.life.MailLife;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A mail: what it says, to whom, and what happened.
 *
 * @param copy as it was last sent, or would be; missing where it cannot be written, or was forgotten
 * @param messageId the same however often it is sent
 * @param problems why it cannot be written
 */
public record MailSheet(MailEntry mail, Optional<MailCopy> copy, String messageId, List<Step> steps,
        List<Problem> problems) {

    /**
     * Something that happened to it.
     *
     * @param event such as {@code put-off}
     * @param why what a server or a person said
     */
    public record Step(String event, ZonedDateTime at, Optional<String> why) {}

    public MailSheet {
        steps = List.copyOf(steps);
        problems = List.copyOf(problems);
    }

    /**
     * A mail with all that is known of it.
     *
     * @param copy as it would be sent now; empty where it was sent, or cannot be written
     */
    public static MailSheet of(MailEntry entry, MailLife mail, Optional<MailCopy> copy, List<Problem> problems,
            ZoneId zone) {
        return new MailSheet(entry, copy.or(mail::copy), mail.messageId(), mail.history().stream()
                .map(step -> new Step(step.event(), MailEntry.moment(step.at(), zone),
                        Optional.of(step.why()).filter(text -> !text.isEmpty())))
                .toList(), problems);
    }

    /** Names and values, for a table of text. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("mail", mail.mail()));
        rows.add(List.of("state", ConstantKey.words(mail.state().name()) + " since "
                + MailEntry.minute(mail.since())));
        mail.next().ifPresent(next -> rows.add(List.of("next", MailEntry.minute(next))));
        mail.why().ifPresent(why -> rows.add(List.of("why", why)));
        copy.ifPresent(said -> {
            said.to().forEach(address -> rows.add(List.of("to", address)));
            rows.add(List.of("subject", said.subject()));
            said.files().forEach(file -> rows.add(List.of("file", file)));
        });
        steps.forEach(step -> rows.add(List.of("step", step.event() + " " + MailEntry.minute(step.at())
                + step.why().map(why -> ": " + why).orElse(""))));
        return rows;
    }
}

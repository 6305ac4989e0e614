package icequill.answer.mail;

import icequill.explain.ConstantKey;
import icequill.ledger.entries.CustomerEntry;
import icequill.life.mail.MailCopy;
import icequill.life.mail.MailMatter;
import icequill.life.mail.MailMatter.Numbered;
import icequill.life.mail.MailState;
import icequill.life.mail.MailState.Drafted;
import icequill.life.mail.MailState.Refused;
import icequill.life.mail.MailState.Returned;
import icequill.life.mail.MailState.Sending;
import icequill.life.mail.MailState.Sent;
import icequill.life.mail.MailState.Unknown;
import icequill.life.mail.MailState.Waiting;
import icequill.life.mail.MailState.Withdrawn;
import icequill.shop.life.MailLife;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * Where a mail stands.
 *
 * @param mail by id
 * @param paper its number, or the name of its file where it bears none
 * @param number of the paper; missing where it bears none
 * @param customer by id
 * @param since the moment of the last step
 * @param next when it may be sent; missing where it does not wait
 * @param tries so far
 * @param why it was put off, refused, returned or withdrawn; where it lies; what the server said when it took it
 * @param to whom it was last sent; nobody before
 * @param files what went along then, by name
 * @param sent when it went out last; missing where it never did
 */
public record MailEntry(String mail, State state, String paper, Optional<String> number, String customer,
        String customerName, Optional<String> site, ZonedDateTime since, Optional<ZonedDateTime> next, int tries,
        Optional<String> why, List<String> to, List<String> files, Optional<ZonedDateTime> sent) {

    /** Where it is in its life. */
    public enum State {
        WAITING, SENDING, DRAFTED, SENT, UNKNOWN, REFUSED, RETURNED, WITHDRAWN
    }

    public MailEntry {
        to = List.copyOf(to);
        files = List.copyOf(files);
    }

    /**
     * A mail as it is at a moment.
     *
     * @param customer whose it is now; empty where the book knows nobody
     * @param zone of the shop
     */
    static MailEntry of(MailLife mail, Optional<CustomerEntry> customer, Instant now, ZoneId zone) {
        MailState state = mail.state().at(now);
        Optional<Waiting> waiting = state instanceof Waiting found ? Optional.of(found) : Optional.empty();
        return new MailEntry(mail.id(), state(state), mail.matter().name(),
                Optional.of(mail.matter()).filter(Numbered.class::isInstance).map(MailMatter::name),
                customer.map(CustomerEntry::id).orElse(mail.customer()),
                customer.map(entry -> entry.customer().name()).orElse(""), mail.site(), moment(state.since(), zone),
                waiting.map(found -> moment(found.next(), zone)), waiting.map(Waiting::tries).orElse(0),
                why(state).filter(text -> !text.isEmpty()), mail.copy().map(MailCopy::to).orElse(List.of()),
                mail.copy().map(MailCopy::files).orElse(List.of()),
                mail.wentOut().map(when -> moment(when, zone)));
    }

    /** To whom, what and when, on one line. */
    public String line() {
        return mail + " " + ConstantKey.words(state.name()) + " " + minute(since) + said(" to ", to)
                + said(": ", files);
    }

    private static String said(String before, List<String> all) {
        return all.isEmpty() ? "" : before + String.join(", ", all);
    }

    static ZonedDateTime moment(Instant instant, ZoneId zone) {
        return instant.atZone(zone).truncatedTo(ChronoUnit.SECONDS);
    }

    /** A moment for the screen, to the minute. */
    static String minute(ZonedDateTime moment) {
        return moment.toLocalDate() + " " + moment.toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    }

    private static State state(MailState state) {
        return switch (state) {
        case Waiting waiting -> State.WAITING;
        case Sending sending -> State.SENDING;
        case Drafted drafted -> State.DRAFTED;
        case Sent sent -> State.SENT;
        case Unknown unknown -> State.UNKNOWN;
        case Refused refused -> State.REFUSED;
        case Returned returned -> State.RETURNED;
        case Withdrawn withdrawn -> State.WITHDRAWN;
        };
    }

    private static Optional<String> why(MailState state) {
        return switch (state) {
        case Waiting waiting -> waiting.why();
        case Sending sending -> Optional.empty();
        case Drafted drafted -> Optional.of(drafted.file());
        case Sent sent -> Optional.of(sent.answer());
        case Unknown unknown -> Optional.of(unknown.why());
        case Refused refused -> Optional.of(refused.why());
        case Returned returned -> Optional.of(returned.why());
        case Withdrawn withdrawn -> Optional.of(withdrawn.reason());
        };
    }
}

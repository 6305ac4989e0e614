package icequill.office.letters;

import icequill.life.mail.MailState;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.shop.life.MailLife;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Sees to it that a paper is not mailed twice unasked. */
public final class Repeat {

    private Repeat() {
    }

    /**
     * Why no other mail about a paper may be written.
     *
     * @param before the mails about it
     * @param again whether one that went out does not matter
     */
    public static Optional<Problem> of(List<MailLife> before, Instant now, boolean again) {
        return before.reversed().stream().filter(mail -> stands(mail.state().at(now), again)).findFirst()
                .map(mail -> new Problem(Code.ALREADY_EXISTS, new Place(mail.matter().name(), 0, ""),
                        "mail " + mail.id() + " is about it already",
                        mail.state() instanceof MailState.Sent
                                ? "--again, where it is to go out once more"
                                : "that mail: icequill mail show " + mail.id()));
    }

    private static boolean stands(MailState state, boolean again) {
        return switch (state) {
        case MailState.Waiting waiting -> true;
        case MailState.Sending sending -> true;
        case MailState.Drafted drafted -> true;
        case MailState.Unknown unknown -> true;
        case MailState.Sent sent -> !again;
        case MailState.Refused refused -> false;
        case MailState.Returned returned -> false;
        case MailState.Withdrawn withdrawn -> false;
        };
    }
}

package icequill.mail;

import java.util.Optional;

/** How far the talk with a mail server got (RFC 5321, section 3). */
enum Step {
    GREETING(""), HELLO("EHLO HELO"), ENCRYPTION("STARTTLS"), LOGIN("AUTH"), SENDER("MAIL"), RECIPIENTS("RCPT"), DATA(
            "DATA"),
    END(".");

    private final String verbs;

    Step(String verbs) {
        this.verbs = verbs;
    }

    /** Empty for a command that only tidies up or asks whether somebody is there. */
    static Optional<Step> of(String command) {
        String verb = command.split(" ", 2)[0];
        for (Step step : values()) {
            if (!verb.isEmpty() && (" " + step.verbs + " ").contains(" " + verb + " ")) {
                return Optional.of(step);
            }
        }
        return Optional.empty();
    }
}

package icequill.office.asking;

import java.util.List;
import java.util.Optional;

/**
 * What somebody is asked, in his language.
 *
 * @param choices a line each, to be answered by its mark
 * @param proposal what an empty answer takes
 * @param help what is said to who does not know what is meant
 */
public record Question(String text, List<String> choices, Optional<String> proposal, String help) {

    public Question {
        choices = List.copyOf(choices);
    }

    /** The same with something that an empty answer takes. */
    Question proposing(String answer) {
        return new Question(text, choices, Optional.of(answer), help);
    }

    Question proposing(Optional<String> answer) {
        return new Question(text, choices, answer, help);
    }

    Question choosing(List<String> lines) {
        return new Question(text, lines, proposal, help);
    }
}

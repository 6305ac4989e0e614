package icequill.mail;

import java.util.Optional;

/**
 * What was said to a mail server last, and what it answered.
 *
 * @param code from 200 to 599; 0 while there is no answer, or none that is one
 * @param answer in one line, at most 300 characters
 * @param refusal the answer to the first recipient who was refused, before one who was put off
 */
record Heard(Step step, String command, int code, String answer, Optional<Refusal> refusal) {

    /** A connection on which nothing was said yet. */
    static final Heard NOTHING = new Heard(Step.GREETING, "", 0, "", Optional.empty());

    private static final int MOST_ANSWER = 300;
    /** What the library makes of a connection that was closed instead of an answer. */
    private static final String CLOSED = "[EOF]";
    private static final int LEAST_CODE = 200;
    private static final int MOST_CODE = 599;

    /** A recipient whom the server did not take. */
    record Refusal(String address, int code, String answer) {}

    Heard said(Step next, String words) {
        return new Heard(next, words, 0, "", refusal);
    }

    Heard answered(int number, String words) {
        int known = number < LEAST_CODE || number > MOST_CODE ? 0 : number;
        String line = words.equals(CLOSED) ? "" : OneLine.shown(words, MOST_ANSWER);
        return new Heard(step, command, known, line, step == Step.RECIPIENTS ? refused(known, line) : refusal);
    }

    private Optional<Refusal> refused(int number, String words) {
        boolean isWorse = number / 100 == 5 && refusal.filter(first -> first.code() / 100 == 5).isEmpty();
        boolean isFirst = number / 100 == 4 && refusal.isEmpty();
        return isWorse || isFirst
                ? Optional.of(new Refusal(command.substring(command.indexOf('<') + 1, command.lastIndexOf('>')), number,
                        words))
                : refusal;
    }
}

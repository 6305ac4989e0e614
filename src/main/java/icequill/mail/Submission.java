package icequill.mail;

import java.util.Optional;

/** What became of a mail that was handed to a server. An answer is what the server said, in one line and cut, or empty. */
public sealed interface Submission {

    /** The server has it, for all recipients. */
    record Taken(String answer) implements Submission {}

    /** The server surely has it not, and may take it later. */
    record PutOff(Why why, String answer) implements Submission {}

    /**
     * The server surely has it not, and will not take it as it is.
     *
     * @param address of the recipient who was refused, where it was one
     */
    record Refused(Why why, String answer, Optional<String> address) implements Submission {}

    /** Surely not taken, nor will any other mail be until something is set right. */
    record Unusable(Why why, String answer) implements Submission {}

    /** All of it was on its way, and no answer came: only a person may decide. */
    record Unknown(Why why) implements Submission {}
}

package icequill.cli.terminal;

import picocli.CommandLine.Parameters;

/** The call that a command is about. */
public final class CallName {

    @Parameters(paramLabel = "CALL", completionCandidates = CallName.Known.class, description = "The call, by its id in the book.")
    private String text = "";

    public String text() {
        return text;
    }

    /** Names of the book. */
    public static final class Known extends Completed {
        Known() {
            super("call");
        }
    }
}

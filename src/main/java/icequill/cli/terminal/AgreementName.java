package icequill.cli.terminal;

import picocli.CommandLine.Parameters;

/** The agreement that a command is about. */
public final class AgreementName {

    @Parameters(paramLabel = "AGREEMENT", completionCandidates = AgreementName.Known.class, description = "The agreement: its id or number in the book, or a file.")
    private String text = "";

    public String text() {
        return text;
    }

    /** Names of the book. */
    public static final class Known extends Completed {
        Known() {
            super("agreement");
        }
    }
}

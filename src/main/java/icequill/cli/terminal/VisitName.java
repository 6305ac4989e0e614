package icequill.cli.terminal;

import picocli.CommandLine.Parameters;

/** The visit that a command is about. */
public final class VisitName {

    @Parameters(paramLabel = "VISIT", completionCandidates = VisitName.Known.class, description = "The visit: its id in the book, or a file.")
    private String text = "";

    public String text() {
        return text;
    }

    /** Names of the book. */
    public static final class Known extends Completed {
        Known() {
            super("visit");
        }
    }
}

package icequill.cli.terminal;

import picocli.CommandLine.Parameters;

/** The work that a quote is for. */
public final class QuoteName {

    @Parameters(paramLabel = "FORM", completionCandidates = QuoteName.Known.class, description = "What is quoted, a planned visit or a maintenance request: its id in the book, or a file.")
    private String text = "";

    public String text() {
        return text;
    }

    /** Names of the book. */
    public static final class Known extends Completed {
        Known() {
            super("quoted");
        }
    }
}

package icequill.cli.terminal;

import picocli.CommandLine.Parameters;

/** The site that a command is about. */
public final class SiteName {

    @Parameters(paramLabel = "SITE", completionCandidates = SiteName.Known.class, description = "The site: its id in the book, or a file with its form.")
    private String text = "";

    public String text() {
        return text;
    }

    /** Names of the book. */
    public static final class Known extends Completed {
        Known() {
            super("site");
        }
    }
}

package icequill.cli.terminal;

import picocli.CommandLine.Parameters;

/** The site that a command is about. */
public final class SiteName {

    @Parameters(paramLabel = "SITE", description = "The site: its id in the book, or a file with its form.")
    private String text = "";

    public String text() {
        return text;
    }
}

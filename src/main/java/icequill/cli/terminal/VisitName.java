package icequill.cli.terminal;

import picocli.CommandLine.Parameters;

/** The visit that a command is about. */
public final class VisitName {

    @Parameters(paramLabel = "VISIT", description = "The visit: its id in the book, or a file.")
    private String text = "";

    public String text() {
        return text;
    }
}

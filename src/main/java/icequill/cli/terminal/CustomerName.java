package icequill.cli.terminal;

import picocli.CommandLine.Parameters;

/** The customer that a command is about. */
public final class CustomerName {

    @Parameters(paramLabel = "CUSTOMER", description = "The customer: an id of the book, or a file with his form.")
    private String text = "";

    public String text() {
        return text;
    }
}

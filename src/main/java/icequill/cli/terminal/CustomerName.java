package icequill.cli.terminal;

import picocli.CommandLine.Parameters;

/** The customer that a command is about. */
public final class CustomerName {

    @Parameters(paramLabel = "CUSTOMER", completionCandidates = CustomerName.Known.class, description = "The customer: an id of the book, or a file with his form.")
    private String text = "";

    public String text() {
        return text;
    }

    /** Names of the book. */
    public static final class Known extends Completed {
        Known() {
            super("customer");
        }
    }
}

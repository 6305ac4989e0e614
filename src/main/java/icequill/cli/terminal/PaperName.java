package icequill.cli.terminal;

import picocli.CommandLine.Parameters;

/** The paper of the book that a command is about. */
public final class PaperName {

    @Parameters(paramLabel = "NUMBER", description = "The number of the paper (of INV-2026-00012 also 12, where no other paper has it), or its PDF.")
    private String text = "";

    public String text() {
        return text;
    }
}

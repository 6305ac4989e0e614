package icequill.cli.book;

import icequill.cli.terminal.ShownCommand;
import icequill.office.care.Shows;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows whatever has a name in the book. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows what the book knows of a paper: whom it went to, its lines and taxes, what it bills, what corrects or replaces it, and where its PDF lies; or of a customer, site, machine, visit, agreement or request.", footerHeading = "%nExamples:%n", footer = {
        "  icequill show INV-2026-00012", "  icequill show 12", "  icequill show late-call",
        "  icequill show A-2026-004"})
public final class ShowCommand extends ShownCommand {

    @Parameters(paramLabel = "NAME", description = "The paper's number (of INV-2026-00012 also 12, where no other paper has it) or its PDF, an id, or a file with a form.")
    private String name = "";

    public ShowCommand(Clock clock) {
        super(clock, Shows.ANYTHING);
    }

    @Override
    protected String named() {
        return name;
    }
}

package icequill.cli.billing;

import icequill.cli.terminal.PaperName;
import icequill.cli.terminal.ShownCommand;
import icequill.office.care.Shows;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows a paper. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows what the book knows of a paper that was issued, of whatever kind.", footerHeading = "%nExamples:%n", footer = {
        "  icequill paper show INV-2026-00012", "  icequill paper show 12"})
public final class PaperShowCommand extends ShownCommand {

    @Mixin
    private PaperName paper = new PaperName();

    public PaperShowCommand(Clock clock) {
        super(clock, Shows.PAPER);
    }

    @Override
    protected String named() {
        return paper.text();
    }
}

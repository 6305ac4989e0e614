package icequill.cli.billing;

import icequill.cli.terminal.PaperName;
import icequill.cli.terminal.ShownCommand;
import icequill.office.care.Shows;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows a credit note. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows what the book knows of a credit note: which invoice it gives back, its lines and taxes, and where its PDF lies.", footerHeading = "%nExample:%n", footer = "  icequill credit show CN-2026-00001")
public final class CreditShowCommand extends ShownCommand {

    @Mixin
    private PaperName paper = new PaperName();

    public CreditShowCommand(Clock clock) {
        super(clock, Shows.CREDIT);
    }

    @Override
    protected String named() {
        return paper.text();
    }
}

package icequill.cli.offer;

import icequill.cli.terminal.PaperName;
import icequill.cli.terminal.ShownCommand;
import icequill.office.care.Shows;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows a quote. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows what the book knows of a quote: whom it went to, its lines or choices, and where its PDF lies.", footerHeading = "%nExample:%n", footer = "  icequill quote show RQ-2026-00001")
public final class QuoteShowCommand extends ShownCommand {

    @Mixin
    private PaperName paper = new PaperName();

    public QuoteShowCommand(Clock clock) {
        super(clock, Shows.QUOTE);
    }

    @Override
    protected String named() {
        return paper.text();
    }
}

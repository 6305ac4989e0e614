package icequill.cli.visit;

import icequill.cli.terminal.ShownCommand;
import icequill.cli.terminal.VisitName;
import icequill.office.care.Shows;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows a visit. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows what the book knows of a visit: who asked and who came, what was found and done, and which papers bill it.", footerHeading = "%nExample:%n", footer = "  icequill visit show late-call")
public final class VisitShowCommand extends ShownCommand {

    @Mixin
    private VisitName visit = new VisitName();

    public VisitShowCommand(Clock clock) {
        super(clock, Shows.VISIT);
    }

    @Override
    protected String named() {
        return visit.text();
    }
}

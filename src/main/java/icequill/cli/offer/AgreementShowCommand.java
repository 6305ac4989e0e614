package icequill.cli.offer;

import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.ShownCommand;
import icequill.office.care.Shows;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows an agreement. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows what the book knows of an agreement, and its papers.", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement show crumb-lane-bakery", "  icequill agreement show A-2026-004"})
public final class AgreementShowCommand extends ShownCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    public AgreementShowCommand(Clock clock) {
        super(clock, Shows.AGREEMENT);
    }

    @Override
    protected String named() {
        return agreement.text();
    }
}

package icequill.cli.offer;

import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.office.agreement.AgreementLifeOffice;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows an agreement. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows how an agreement stands: its payments, billed and open, its visits, done and to come, and what happened to it.", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement show crumb-lane-bakery", "  icequill agreement show A-2026-004"})
public final class AgreementShowCommand extends BookCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public AgreementShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(AgreementLifeOffice.of(pricing(folder()), clock(), reader.language()).show(agreement.text()),
                sheet -> printLines(sheet.lines().stream()));
    }
}

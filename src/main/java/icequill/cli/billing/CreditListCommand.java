package icequill.cli.billing;

import icequill.cli.terminal.FoundCommand;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Command;

/** Lists credit notes. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists issued credit notes, the newest first. Everything that is asked for has to fit.", footerHeading = "%nExamples:%n", footer = {
        "  icequill credit list --month 2026-05", "  icequill credit list pennon"})
public final class CreditListCommand extends FoundCommand {

    public CreditListCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected List<String> kinds() {
        return List.of("credit-note");
    }
}

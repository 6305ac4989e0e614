package icequill.cli.offer;

import icequill.cli.terminal.FoundCommand;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Command;

/** Lists quotes. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists issued quotes, the newest first. Everything that is asked for has to fit.", footerHeading = "%nExamples:%n", footer = {
        "  icequill quote list --month 2026-05", "  icequill quote list crumb lane"})
public final class QuoteListCommand extends FoundCommand {

    public QuoteListCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected List<String> kinds() {
        return List.of("quote");
    }
}

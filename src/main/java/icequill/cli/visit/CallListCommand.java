package icequill.cli.visit;

import java.time.Clock;
import picocli.CommandLine.Command;

/** Lists the calls of the book. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists calls, that is visits that somebody asked for, the newest first. What is asked for has to fit all at once.", footerHeading = "%nExamples:%n", footer = {
        "  icequill call list --month 2026-05", "  icequill call list --caller oyelaran"})
public final class CallListCommand extends VisitsCommand {

    public CallListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return visits(true);
    }
}

package icequill.cli.visit;

import icequill.answer.call.CallSheet;
import icequill.office.call.CallOffice;
import icequill.problem.Validated;
import java.time.Clock;
import java.util.Optional;
import picocli.CommandLine.Command;

/** Closes a call. */
@Command(name = "close", mixinStandardHelpOptions = true, description = "Closes a call that somebody went to, once nothing is left to do.", footerHeading = "%nExample:%n", footer = "  icequill call close hotel-fernhill-2026-08-31")
public final class CallCloseCommand extends CallStepCommand {

    public CallCloseCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<CallSheet> step(CallOffice office, String id) {
        return office.close(id, Optional.empty());
    }
}

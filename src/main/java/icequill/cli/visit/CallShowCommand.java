package icequill.cli.visit;

import icequill.answer.call.CallSheet;
import icequill.office.call.CallOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Shows a call. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows what the book knows of a call: who called and why, what may be spent, who goes there, and whether somebody came in time.", footerHeading = "%nExample:%n", footer = "  icequill call show hotel-fernhill-2026-08-31")
public final class CallShowCommand extends CallStepCommand {

    public CallShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<CallSheet> step(CallOffice office, String id) {
        return office.show(id);
    }
}

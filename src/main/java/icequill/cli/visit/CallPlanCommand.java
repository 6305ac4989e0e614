package icequill.cli.visit;

import icequill.answer.call.CallSheet;
import icequill.office.call.CallOffice;
import icequill.problem.Validated;
import java.time.Clock;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Plans a call. */
@Command(name = "plan", mixinStandardHelpOptions = true, description = "Says who goes to a call and when; said again, it is planned anew.", footerHeading = "%nExample:%n", footer = "  icequill call plan hotel-fernhill-2026-08-31 --person \"Ada Quill\" --at 2026-08-31T16:00")
public final class CallPlanCommand extends CallStepCommand {

    @Option(names = "--person", required = true, paramLabel = "NAME", description = "Who goes there.")
    private String person = "";

    @Option(names = "--at", required = true, paramLabel = "TIME", description = "When, as 2026-05-13T16:00.")
    private String at = "";

    public CallPlanCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<CallSheet> step(CallOffice office, String id) {
        return office.plan(id, told("person", person, "at", at), Optional.empty());
    }
}

package icequill.cli.visit;

import icequill.tax.Stage;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Bills what was held back of a job. */
@Command(name = "release", mixinStandardHelpOptions = true, description = "Bills what the invoices of the parts of a finished job hold back.", footerHeading = "%nExample:%n", footer = "  icequill job release RQ-2026-00001")
public final class JobReleaseCommand extends JobStageCommand {

    public JobReleaseCommand(Clock clock) {
        super(clock, Stage.Kind.RELEASE);
    }
}

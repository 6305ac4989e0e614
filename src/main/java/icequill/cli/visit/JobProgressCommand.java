package icequill.cli.visit;

import icequill.tax.Stage;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Bills the next part of a job. */
@Command(name = "progress", mixinStandardHelpOptions = true, description = "Bills the next of the parts in which an accepted repair quote is paid, less what is held back of it. The invoice of the finished work takes it off.", footerHeading = "%nExample:%n", footer = "  icequill job progress RQ-2026-00001")
public final class JobProgressCommand extends JobStageCommand {

    public JobProgressCommand(Clock clock) {
        super(clock, Stage.Kind.PROGRESS);
    }
}

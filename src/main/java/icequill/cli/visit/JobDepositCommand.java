package icequill.cli.visit;

import icequill.tax.Stage;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Bills the deposit of a job. */
@Command(name = "deposit", mixinStandardHelpOptions = true, description = "Bills the deposit that an accepted repair quote asks for, by an invoice of its own. The invoice of the finished work takes it off.", footerHeading = "%nExample:%n", footer = "  icequill job deposit RQ-2026-00001")
public final class JobDepositCommand extends JobStageCommand {

    public JobDepositCommand(Clock clock) {
        super(clock, Stage.Kind.DEPOSIT);
    }
}

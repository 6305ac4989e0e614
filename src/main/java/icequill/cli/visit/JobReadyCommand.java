package icequill.cli.visit;

import icequill.life.job.JobEvent;
import icequill.life.job.JobEvent.Readied;
import java.time.Clock;
import java.time.LocalDate;
import picocli.CommandLine.Command;

/** Notes that a job can be planned. */
@Command(name = "ready", mixinStandardHelpOptions = true, description = "Notes that everything a job needs is there, so that it can be planned.", footerHeading = "%nExample:%n", footer = "  icequill job ready RQ-2026-00001")
public final class JobReadyCommand extends JobNoting {

    public JobReadyCommand(Clock clock) {
        super(clock);
    }

    @Override
    JobEvent event(LocalDate when) {
        return new Readied(when);
    }
}

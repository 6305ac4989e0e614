package icequill.cli.visit;

import icequill.life.job.JobEvent;
import icequill.life.job.JobEvent.Dropped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Takes a job back. */
@Command(name = "withdraw", mixinStandardHelpOptions = true, description = "Takes back a job that will not be done. The book keeps it, and why.", footerHeading = "%nExample:%n", footer = "  icequill job withdraw RQ-2026-00001 --reason \"The machine is replaced.\"")
public final class JobWithdrawCommand extends JobNoting {

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why; the book keeps it.")
    private String reason = "";

    public JobWithdrawCommand(Clock clock) {
        super(clock);
    }

    @Override
    JobEvent event(LocalDate when) {
        return new Dropped(when, Optional.of(reason));
    }
}

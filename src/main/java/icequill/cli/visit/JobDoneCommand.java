package icequill.cli.visit;

import icequill.life.job.JobEvent;
import icequill.life.job.JobEvent.Finished;
import java.time.Clock;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Notes that a job is done. */
@Command(name = "done", mixinStandardHelpOptions = true, description = "Notes on which visit a job was done. One that was quoted as a planned visit is done as soon as that visit is.", footerHeading = "%nExample:%n", footer = "  icequill job done RQ-2026-00001 --visit late-call")
public final class JobDoneCommand extends JobNoting {

    @Option(names = "--visit", required = true, paramLabel = "ID", description = "The visit, which was done at the site of the job.")
    private String visit = "";

    public JobDoneCommand(Clock clock) {
        super(clock);
    }

    @Override
    JobEvent event(LocalDate when) {
        return new Finished(when, visit);
    }
}

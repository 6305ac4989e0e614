package icequill.cli.visit;

import icequill.cli.terminal.BookCommand;
import icequill.office.quoting.JobOffice;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists jobs. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists accepted repairs that are not billed yet, those that wait longest first.", footerHeading = "%nExamples:%n", footer = {
        "  icequill job list", "  icequill job list --all"})
public final class JobListCommand extends BookCommand {

    @Option(names = "--all", description = "Those too that are billed or withdrawn.")
    private boolean all;

    public JobListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return list(JobOffice.of(folder(), clock()).jobs(all));
    }
}

package icequill.cli.visit;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.PaperName;
import icequill.cli.terminal.Table;
import icequill.office.quoting.JobOffice;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows a job. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows where a job stands.", footerHeading = "%nExample:%n", footer = "  icequill job show RQ-2026-00001")
public final class JobShowCommand extends BookCommand {

    @Mixin
    private PaperName quote = new PaperName();

    public JobShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(JobOffice.of(folder(), clock()).job(quote.text()), job -> print(Table.of(job.rows(), 2)));
    }
}

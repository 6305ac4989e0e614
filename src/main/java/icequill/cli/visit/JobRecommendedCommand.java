package icequill.cli.visit;

import icequill.cli.terminal.BookCommand;
import icequill.office.quoting.JobOffice;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists repairs that were recommended. */
@Command(name = "recommended", mixinStandardHelpOptions = true, description = "Lists repairs that visits recommended and nobody did since, the oldest first: what the customer said, and whether they were quoted.", footerHeading = "%nExamples:%n", footer = {
        "  icequill job recommended", "  icequill job recommended pennon-wharf-taproom"})
public final class JobRecommendedCommand extends BookCommand {

    @Parameters(index = "0", arity = "0..1", paramLabel = "SITE", description = "Only of this site, by id.")
    private @Nullable String site;

    public JobRecommendedCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return list(JobOffice.of(folder(), clock()).recommended(Optional.ofNullable(site).map(this::id)));
    }
}

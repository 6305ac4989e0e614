package icequill.cli.visit;

import icequill.life.job.JobEvent;
import icequill.life.job.JobEvent.PartsOrdered;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Notes that parts of a job are ordered. */
@Command(name = "order", mixinStandardHelpOptions = true, description = "Notes that parts for a job are ordered, and when they are to come.", footerHeading = "%nExample:%n", footer = "  icequill job order RQ-2026-00001 --from \"the maker's depot\" --on 2026-05-18 --expected 2026-05-27")
public final class JobOrderCommand extends JobNoting {

    @Option(names = "--from", paramLabel = "TEXT", description = "Who sends them.")
    private @Nullable String supplier;

    @Option(names = "--expected", paramLabel = "DAY", description = "When they are to come.")
    private @Nullable LocalDate expected;

    public JobOrderCommand(Clock clock) {
        super(clock);
    }

    @Override
    JobEvent event(LocalDate when) {
        return new PartsOrdered(when, Optional.ofNullable(supplier), Optional.ofNullable(expected));
    }
}

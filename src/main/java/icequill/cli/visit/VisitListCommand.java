package icequill.cli.visit;

import java.time.Clock;
import picocli.CommandLine.Command;

/** Lists the book's visits. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists visits, planned and done, the newest first. What is asked for has to fit all at once.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit list --month 2026-05", "  icequill visit list --site hotel-fernhill --state done,planned",
        "  icequill visit list --machine hotel-fernhill/lobby-bar",
        "  icequill visit list --by quill --from 2026-05-01",
        "  icequill visit list --caller oyelaran"})
public final class VisitListCommand extends VisitsCommand {

    public VisitListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return visits(false);
    }
}

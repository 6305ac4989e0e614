package icequill.cli;

import icequill.office.Office;
import icequill.office.WrittenPaper;
import icequill.problem.Checked;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Writes a comparison of plans with calls. */
@Command(name = "compare", mixinStandardHelpOptions = true, description = "Writes what a year of each plan costs beside a number of calls, from a request for a maintenance quote that tells of calls, as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill compare quotes/crumb-lane-plan.yaml",
        "  icequill compare quotes/crumb-lane-plan.yaml --date 2026-05-14 --lang es --html"})
final class CompareCommand extends PaperCommand {

    CompareCommand(Clock clock) {
        super(clock);
    }

    @Override
    Checked<WrittenPaper> write(Office office, Path from, Office.Wish wish) {
        return office.plans().compare(from, wish);
    }
}

package icequill.cli;

import icequill.office.Office;
import icequill.office.WrittenPaper;
import icequill.problem.Checked;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Writes a quote. */
@Command(name = "quote", mixinStandardHelpOptions = true, description = "Writes the quote of a planned repair as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill quote quotes/float-switch.yaml                       a draft, marked as one",
        "  icequill quote quotes/float-switch.yaml --number Q-2026-001 --date 2026-05-14"})
final class QuoteCommand extends PaperCommand {

    QuoteCommand(Clock clock) {
        super(clock);
    }

    @Override
    Checked<WrittenPaper> write(Office office, Path from, Office.Wish wish) {
        return office.quote(from, wish);
    }
}

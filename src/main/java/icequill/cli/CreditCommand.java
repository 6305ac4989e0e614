package icequill.cli;

import icequill.office.Office;
import icequill.office.WrittenPaper;
import icequill.problem.Checked;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Writes a credit note. */
@Command(name = "credit", mixinStandardHelpOptions = true, description = "Writes a credit note, for a whole invoice or for lines of it, as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill credit credits/wrong-minutes.yaml                    a draft, marked as one",
        "  icequill credit credits/wrong-minutes.yaml --number C-2026-001 --date 2026-05-20"})
final class CreditCommand extends PaperCommand {

    CreditCommand(Clock clock) {
        super(clock);
    }

    @Override
    Checked<WrittenPaper> write(Office office, Path from, Office.Wish wish) {
        return office.credit(from, wish);
    }
}

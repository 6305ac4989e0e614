package icequill.cli.paper;

import icequill.answer.WrittenPaper;
import icequill.cli.terminal.PaperCommand;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Writes an agreement. */
@Command(name = "agreement", mixinStandardHelpOptions = true, description = "Writes a maintenance agreement, a summary of one page first, as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement crumb-lane-bakery",
        "  icequill agreement crumb-lane-bakery --date 2026-05-20 --lang es"})
public final class AgreementCommand extends PaperCommand {

    public AgreementCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return office.plans().agreement(from, options);
    }
}

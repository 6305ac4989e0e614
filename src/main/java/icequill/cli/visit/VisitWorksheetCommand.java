package icequill.cli.visit;

import icequill.answer.WrittenPaper;
import icequill.cli.terminal.PaperCommand;
import icequill.cli.terminal.VisitName;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Writes the work sheet of one planned visit. */
@Command(name = "worksheet", mixinStandardHelpOptions = true, description = "Writes the technician's sheet for a planned visit, its tasks in order with doses, readings and cautions, as PDF into the shop folder's papers/; for a visit of several days one a day.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit worksheet summer-cleaning-bakery",
        "  icequill visit worksheet summer-cleaning-bakery --lang es --html",
        "  icequill visit worksheet summer-cleaning-bakery --then noon-visit --drive 25"})
public final class VisitWorksheetCommand extends PaperCommand {

    @Mixin
    private VisitName visit = new VisitName();

    @Mixin
    private NextVisit next = new NextVisit();

    public VisitWorksheetCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected String named() {
        return visit.text();
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return next.named(this::form).map(then -> office.worksheets(from, then, next.drive(), options))
                .orElseGet(() -> office.worksheet(from, options));
    }
}

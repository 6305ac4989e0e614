package icequill.cli.offer;

import icequill.answer.WrittenPaper;
import icequill.cli.terminal.PaperCommand;
import icequill.cli.terminal.QuoteName;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Writes the draft of a quote. */
@Command(name = "draft", mixinStandardHelpOptions = true, description = "Writes the quote of a planned repair, or of maintenance with all its choices, as PDF into the shop folder's papers/, marked as a draft.", footerHeading = "%nExamples:%n", footer = {
        "  icequill quote draft float-switch",
        "  icequill quote draft crumb-lane-plan --date 2026-05-14 --lang es --html"})
public final class QuoteDraftCommand extends PaperCommand {

    @Mixin
    private QuoteName form = new QuoteName();

    public QuoteDraftCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected String named() {
        return form.text();
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return office.quote(from, options);
    }
}

package icequill.cli.paper;

import icequill.answer.WrittenPaper;
import icequill.cli.terminal.PaperCommand;
import icequill.cli.terminal.Printout;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes a quote. */
@Command(name = "quote", mixinStandardHelpOptions = true, description = "Writes the quote of a planned repair, or of maintenance with all its choices, as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill quote float-switch                       a draft, marked as one",
        "  icequill quote float-switch --number Q-2026-001 --date 2026-05-14",
        "  icequill quote float-switch --owner               what it costs and earns",
        "  icequill quote crumb-lane-plan --number Q-2026-002",
        "  icequill quote crumb-lane-plan --owner            by plan and visit"})
public final class QuoteCommand extends PaperCommand {

    @Option(names = "--owner", description = "Print cost, price and margin instead: of each line, or of each plan and visit. For the owner's eyes only.")
    private boolean owner;

    public QuoteCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        if (!owner) {
            return super.call();
        }
        Printout printout = printout();
        if (office().isMaintenance(from())) {
            return printout.show(office().plans().earnings(from(), paperOptions()),
                    earnings -> EarningsTable.print(earnings, printout));
        }
        return printout.show(office().priceOfQuote(from(), paperOptions()),
                sheet -> PriceTable.print(sheet, true, true, printout));
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return office.quote(from, options);
    }
}

package icequill.cli.offer;

import icequill.answer.quote.QuoteOutcomes;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.PeriodOptions;
import icequill.cli.terminal.Table;
import icequill.office.quoting.QuoteOffice;
import icequill.shop.ShopDay;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Sums up what became of quotes. */
@Command(name = "outcomes", mixinStandardHelpOptions = true, description = "Sums up quotes won and lost, and why they were declined: how many, and what they come to before tax, plans by the year.", footerHeading = "%nExamples:%n", footer = {
        "  icequill quote outcomes --month 2026-05", "  icequill quote outcomes --from 2026-01-01"})
public final class QuoteOutcomesCommand extends BookCommand {

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    public QuoteOutcomesCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(QuoteOffice.of(folder(), clock()).outcomes(period.period(), ShopDay.today(folder(), clock())),
                found -> print(found.quotes().isEmpty() ? "None." : Table.of(QuoteOutcomes.HEAD, found.cells(), 1)));
    }
}

package icequill.cli.visit;

import icequill.answer.history.VisitEarnings;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.PeriodOptions;
import icequill.cli.terminal.Table;
import icequill.office.care.EarningsOffice;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows the owner what visits earned. */
@Command(name = "earnings", mixinStandardHelpOptions = true, description = "Shows the owner what done visits brought in (billed less given back; the price of what is not billed yet), what they cost the shop (wages, paid time on the road, miles, materials, cards) and what was left, before tax, the most first. Lines whose cost nobody wrote down stand apart.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit earnings --by customer --month 2026-05", "  icequill visit earnings --site hotel-fernhill",
        "  icequill visit earnings --by tier"})
public final class VisitEarningsCommand extends BookCommand {

    @Option(names = "--by", paramLabel = "WHAT", description = "A row for each ${COMPLETION-CANDIDATES}. Default: visit.")
    private EarningsOffice.By by = EarningsOffice.By.VISIT;

    @Option(names = "--site", paramLabel = "SITE", description = "Only those of a site, by its id or a file.")
    private @Nullable String site;

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    public VisitEarningsCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(
                EarningsOffice.of(folder(), clock()).of(by, period.period(), Optional.ofNullable(site).map(this::id)),
                earned -> print(Table.of(VisitEarnings.HEAD, earned.cells(), 1)));
    }
}

package icequill.cli.days;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.office.days.DueOffice;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists the visits that are due. */
@Command(name = "due", mixinStandardHelpOptions = true, description = "Lists the visits that are due by agreements, by week and by person, those that are recorded taken off; then sites without an agreement whose next full cleaning is due.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit due                       within six weeks",
        "  icequill visit due --until 2027-12-31",
        "  icequill visit due --date 2026-07-01 --until 2026-09-30 --json"})
public final class VisitDueCommand extends BookCommand {

    @Option(names = "--until", paramLabel = "DAY", description = "Due up to this day; six weeks after --date if left out.")
    private @Nullable LocalDate until;

    @Option(names = "--date", paramLabel = "DAY", description = "The day as of which visits are late. Default: today.")
    private @Nullable LocalDate date;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public VisitDueCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = folder();
        LocalDate day = date == null ? ShopDay.today(folder, clock()) : date;
        return show(DueOffice.of(ShopBook.of(folder, clock())).due(day,
                until == null ? DueOffice.usualUntil(day) : until, reader.language()),
                sheet -> printLines(sheet.lines().stream()));
    }
}

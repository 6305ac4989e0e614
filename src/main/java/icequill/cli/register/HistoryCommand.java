package icequill.cli.register;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.PeriodOptions;
import icequill.cli.terminal.ReaderOptions;
import icequill.office.care.HistoryOffice;
import java.time.Clock;
import java.util.Optional;
import picocli.CommandLine.Mixin;

/** What the histories of sites and of machines share. */
abstract class HistoryCommand extends BookCommand {

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    HistoryCommand(Clock clock) {
        super(clock);
    }

    /**
     * Tells it.
     *
     * @param machine by id; empty for all of the site
     */
    final int history(String site, Optional<String> machine) {
        return show(HistoryOffice.of(folder(), clock()).site(site, machine, period.period(), reader.language()),
                sheet -> printParagraphs(sheet.lines()));
    }
}

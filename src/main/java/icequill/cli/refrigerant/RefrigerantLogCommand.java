package icequill.cli.refrigerant;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.PeriodOptions;
import icequill.cli.terminal.ReaderOptions;
import icequill.office.refrigerant.RefrigerantOffice;
import icequill.shop.ShopBook;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows the log of refrigerant. */
@Command(name = "log", mixinStandardHelpOptions = true, description = "Shows what was added and recovered, machine by machine, with the leak rate by both methods of the law and whether the law asks for it, and what moved with each cylinder.", footerHeading = "%nExamples:%n", footer = {
        "  icequill refrigerant log --month 2026-05",
        "  icequill refrigerant log --machine hotel-fernhill/lobby-bar",
        "  icequill refrigerant log --site hotel-fernhill --lang es --json"})
public final class RefrigerantLogCommand extends BookCommand {

    @Option(names = "--site", paramLabel = "SITE", description = "Only at this site, by id.")
    private @Nullable String site;

    @Option(names = "--machine", paramLabel = "MACHINE", description = "Only of this machine: SITE/MACHINE, or its id alone with --site.")
    private @Nullable String machine;

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public RefrigerantLogCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(RefrigerantOffice.of(ShopBook.of(folder(), clock())).log(
                new RefrigerantOffice.Scope(Optional.ofNullable(site), Optional.ofNullable(machine),
                        period.period()),
                reader.language()), sheet -> printParagraphs(sheet.lines()));
    }
}

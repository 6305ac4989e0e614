package icequill.cli.book;

import icequill.answer.rates.ToldVersion;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.care.RatesOffice;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Lists the versions of the rates. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the versions of rates, templates and settings that papers were made by: when each came into force, by whom, and how many papers name it.", footerHeading = "%nExample:%n", footer = "  icequill rates list")
public final class RatesListCommand extends BookCommand {

    public RatesListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(RatesOffice.of(folder(), clock()).list(), list -> {
            if (list.versions().isEmpty()) {
                print("No rates are in force yet.");
            } else {
                print(Table.of(ToldVersion.HEAD, list.versions().stream().map(ToldVersion::row).toList(), 4));
            }
        });
    }
}

package icequill.cli.book;

import icequill.answer.rates.ToldVersion;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.care.RatesOffice;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Lists the versions of the rates. */
@Command(name = "rates", mixinStandardHelpOptions = true, subcommands = {RatesShowCommand.class,
        RatesExportCommand.class,
        RatesAdoptCommand.class}, description = "Lists the versions of rates, templates and settings that papers were made by: when each came into force, by whom, and how many papers name it. With a book of one office the first paper that is issued by changed rates puts them into force; offices that share a book do it by: rates adopt.", footerHeading = "%nExamples:%n", footer = {
                "  icequill rates", "  icequill rates show", "  icequill rates export 9661cb12511c2629 rates-of-may",
                "  icequill rates adopt"})
public final class RatesCommand extends BookCommand {

    public RatesCommand(Clock clock) {
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

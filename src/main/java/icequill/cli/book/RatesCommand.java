package icequill.cli.book;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on the versions of the rates. */
@Command(name = "rates", mixinStandardHelpOptions = true, subcommands = {RatesAdoptCommand.class,
        RatesExportCommand.class, RatesListCommand.class, RatesPricesCommand.class, RatesRaiseCommand.class,
        RatesTryCommand.class,
        RatesShowCommand.class}, description = "Keeps the versions of rates, templates and settings that papers are made by. With a book of one office the first paper that is issued by changed rates puts them into force; offices that share a book do it by: rates adopt.", footerHeading = "%nExamples:%n", footer = {
                "  icequill rates prices", "  icequill rates list", "  icequill rates show",
                "  icequill rates export 9661cb12511c2629 rates-of-may", "  icequill rates adopt"})
public final class RatesCommand extends Noun {}

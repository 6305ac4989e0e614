package icequill.cli.book;

import icequill.answer.rates.RatesExport;
import icequill.cli.terminal.BookCommand;
import icequill.office.care.RatesOffice;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes the files of a version of the rates. */
@Command(name = "export", mixinStandardHelpOptions = true, description = "Writes the files of a version of the rates into a folder: pricing/, templates/, and shop.yaml without its part \"book\".", footerHeading = "%nExample:%n", footer = "  icequill rates export 9661cb12511c2629 rates-of-may")
public final class RatesExportCommand extends BookCommand {

    @Parameters(index = "0", paramLabel = "VERSION", description = "The version, by its id or the first four or more letters of it.")
    private String version = "";

    @Parameters(index = "1", paramLabel = "DIR", description = "Where no files of these names lie yet.")
    private Path target = Path.of("");

    public RatesExportCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(RatesOffice.of(folder(), clock()).export(version, target).map(RatesExport::new),
                rates -> print("Wrote " + rates.folder()));
    }
}

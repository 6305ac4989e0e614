package icequill.cli.book;

import icequill.answer.ExportResult;
import icequill.cli.terminal.BookCommand;
import icequill.office.care.BookMaintenance;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Writes the book out for other programs. */
@Command(name = "export", mixinStandardHelpOptions = true, description = "Writes the book out for other programs: to a .json file everything, to a .csv file the list of papers, credit notes negative.", footerHeading = "%nExamples:%n", footer = {
        "  icequill export book.json", "  icequill export papers.csv --replace"})
public final class ExportCommand extends BookCommand {

    @Parameters(paramLabel = "FILE", description = "The file to write; its ending, .json or .csv, says what.")
    private Path file = Path.of("");

    @Option(names = "--replace", description = "Write in the place of a file that exists.")
    private boolean replace;

    public ExportCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        BookMaintenance office = BookMaintenance.of(folder(), clock());
        if (!name.endsWith(".json") && !name.endsWith(".csv")) {
            throw new ParameterException(spec().commandLine(),
                    "\"" + file + "\" says not what to write: end it in .json or .csv");
        }
        return show(name.endsWith(".csv")
                ? office.papers(file, replace, progress("written"))
                : office.export(file, replace, progress("written")), ExportResult::json,
                done -> print("Wrote " + done.file() + ", " + done.papers() + " papers"));
    }
}

package icequill.cli.book;

import icequill.cli.terminal.BookCommand;
import icequill.office.care.BookMaintenance;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Writes the book out for other programs. */
@Command(name = "export", mixinStandardHelpOptions = true, description = "Writes the book out: to a .yaml file its forms, all or those that are named, which import takes in again; to a .json file everything, for other programs; to a .csv file the list of papers, credit notes negative.", footerHeading = "%nExamples:%n", footer = {
        "  icequill export book.json", "  icequill export papers.csv --replace", "  icequill export forms.yaml",
        "  icequill export - late-call       one form, on the screen"})
public final class ExportCommand extends BookCommand {

    @Parameters(index = "0", paramLabel = "FILE", description = "The file to write; its ending, .yaml, .json or .csv, says what. - writes forms to the screen.")
    private Path file = Path.of("");

    @Parameters(index = "1..*", paramLabel = "NAME", description = "With .yaml: only these, by id or number.")
    private List<String> names = new ArrayList<>();

    @Option(names = "--replace", description = "Write in the place of a file that exists.")
    private boolean replace;

    public ExportCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        BookMaintenance office = BookMaintenance.of(folder(), clock());
        if (name.equals("-")) {
            return show(office.forms(names), forms -> {
                printout().out().print(forms.yaml());
                printout().out().flush();
            });
        }
        if (name.endsWith(".yaml")) {
            return show(office.forms(names).then(forms -> forms.write(file, replace).map(written -> forms)),
                    forms -> print("Wrote " + file + ", " + forms.forms().size() + " forms"));
        }
        if (!names.isEmpty()) {
            throw new ParameterException(spec().commandLine(), "names go with a file that ends in .yaml, or with -");
        }
        if (!name.endsWith(".json") && !name.endsWith(".csv")) {
            throw new ParameterException(spec().commandLine(),
                    "\"" + file + "\" says not what to write: end it in .yaml, .json or .csv");
        }
        return show(name.endsWith(".csv")
                ? office.papers(file, replace, progress("written"))
                : office.export(file, replace, progress("written")),
                done -> print("Wrote " + done.file() + ", " + done.papers() + " papers"));
    }
}

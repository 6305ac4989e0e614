package icequill.cli.book;

import icequill.answer.ImportResult;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.register.ImportOffice;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes lists into the book. */
@Command(name = "import", mixinStandardHelpOptions = true, description = "Takes forms (YAML, one or several in a file) and lists (CSV) into the shop's book: all of them, or none. Each form says what it tells of (form: customer, site, agreement, maintenance-request, brushing-request, planned-visit or visit); what the book knows by that name is changed, the rest is new. Heads of lists are as the flags of add are called, in one word (--vendor-number is vendorNumber), besides customer, site, machine and parent for ids.", footerHeading = "%nExamples:%n", footer = {
        "  icequill import site.yaml first-visit.yaml",
        "  icequill import customers.csv sites.csv machines.csv --dry-run",
        "  icequill import from-the-van/*.yaml"})
public final class ImportCommand extends BookCommand {

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Files that end in .yaml or .csv.")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--dry-run", description = "List every problem, with line and column, and store nothing.")
    private boolean dryRun;

    public ImportCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(ImportOffice.of(pricing(folder()), clock()).run(files, dryRun), this::tell);
    }

    private void tell(ImportResult taken) {
        print(Table.of(List.of("form", "new", "changed", "the same"), taken.rows(), 1));
        if (taken.dryRun()) {
            print("All is well; nothing was stored.");
        }
    }
}

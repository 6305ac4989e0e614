package icequill.cli.book;

import icequill.answer.ImportResult;
import icequill.cli.terminal.BookCommand;
import icequill.office.register.ImportOffice;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Takes lists into the book. */
@Command(name = "import", mixinStandardHelpOptions = true, description = "Takes customers, sites and machines from CSV lists into the shop's book: all of them, or none. Heads are as the flags of add are called, in one word (--vendor-number is vendorNumber), besides customer, site, machine and parent for ids.", footerHeading = "%nExamples:%n", footer = {
        "  icequill import --customers customers.csv --sites sites.csv --machines machines.csv --dry-run",
        "  icequill import --machines machines.csv"})
public final class ImportCommand extends BookCommand {

    @Option(names = "--customers", paramLabel = "FILE", description = "A list of customers: customer, name, street, city, postalCode, country, ...")
    private @Nullable Path customers;

    @Option(names = "--sites", paramLabel = "FILE", description = "A list of sites: site, customer, name, street, city, miles, taxPlace, ...")
    private @Nullable Path sites;

    @Option(names = "--machines", paramLabel = "FILE", description = "A list of machines: site, machine, model, where, make, form, ...")
    private @Nullable Path machines;

    @Option(names = "--dry-run", description = "List every problem, with line and column, and store nothing.")
    private boolean dryRun;

    public ImportCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(ImportOffice.of(folder(), clock()).run(Optional.ofNullable(customers), Optional.ofNullable(sites),
                Optional.ofNullable(machines), dryRun), ImportResult::json, this::tell);
    }

    private void tell(ImportResult lists) {
        print((lists.dryRun() ? "All is well, nothing stored: " : "Stored ") + lists.customers() + " customers, "
                + lists.sites() + " sites, " + lists.machines() + " machines; " + lists.changed()
                + " of them were in the book before.");
    }
}

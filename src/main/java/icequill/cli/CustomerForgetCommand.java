package icequill.cli;

import icequill.office.Forgotten;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Forgets a customer. */
@Command(name = "forget", mixinStandardHelpOptions = true, description = "Blanks what is personal about a customer: names, addresses, bill-to, numbers, notes and visits. Issued papers stay as they are for the years that shop.yaml sets (book: retentionYears); nothing is ever deleted by itself. This cannot be undone.")
final class CustomerForgetCommand extends EntryCommand {

    @Parameters(paramLabel = "ID", description = "The customer, by id.")
    private String id = "";

    CustomerForgetCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(office().forget(id), Forgotten::json, this::tell);
    }

    private void tell(Forgotten forgotten) {
        print("Forgotten: " + forgotten.customer() + ", with " + forgotten.sites().size() + " sites and their visits");
        forgotten.keptUntil().ifPresent(day -> print(forgotten.papers()
                + " papers stay as they were issued, the last until " + day));
        forgotten.files().forEach(file -> print("Still there, for you to delete: " + file));
    }
}

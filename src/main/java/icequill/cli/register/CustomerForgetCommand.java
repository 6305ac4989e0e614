package icequill.cli.register;

import icequill.answer.ForgetResult;
import icequill.cli.terminal.Confirmation;
import icequill.cli.terminal.CustomerName;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Forgets a customer. */
@Command(name = "forget", mixinStandardHelpOptions = true, description = "Blanks what is personal about a customer: names, addresses, bill-to, numbers, notes and visits. Issued papers stay as they are for the years that shop.yaml sets (book: retentionYears); nothing is ever deleted by itself. This cannot be undone, so it asks first.", footerHeading = "%nExamples:%n", footer = {
        "  icequill customer forget mill-lane --dry-run",
        "  icequill customer forget mill-lane"})
public final class CustomerForgetCommand extends EntryCommand {

    @Mixin
    private CustomerName customer = new CustomerName();

    @Option(names = "--dry-run", description = "Says what would be blanked and what stays, and blanks nothing.")
    private boolean dryRun;

    @Mixin
    private Confirmation sure = new Confirmation();

    public CustomerForgetCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        String id = id(customer.text());
        if (dryRun) {
            return show(office().wouldForget(id), blanked -> {
                tell(blanked);
                print("Only tried: nothing was blanked.");
            });
        }
        return show(sure.isGiven()
                ? office().forget(id)
                : office().wouldForget(id).then(blanked -> sure.of(blanked, question(blanked), id))
                        .then(blanked -> office().forget(id)),
                this::tell);
    }

    private static String question(ForgetResult blanked) {
        return "This blanks customer " + blanked.forgotten() + " with " + blanked.sites().size()
                + " sites and their visits for good.";
    }

    private void tell(ForgetResult forgotten) {
        print("Forgotten: " + forgotten.forgotten() + ", with " + forgotten.sites().size() + " sites and their visits");
        forgotten.keptUntil().ifPresent(day -> print(forgotten.papers()
                + " papers stay as they were issued, the last until " + day));
        forgotten.files().forEach(file -> print("Still there, for you to delete: " + file));
    }
}

package icequill.cli;

import icequill.office.Forgotten;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.io.Console;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Forgets a customer. */
@Command(name = "forget", mixinStandardHelpOptions = true, description = "Blanks what is personal about a customer: names, addresses, bill-to, numbers, notes and visits. Issued papers stay as they are for the years that shop.yaml sets (book: retentionYears); nothing is ever deleted by itself. This cannot be undone, so it asks first.", footerHeading = "%nExamples:%n", footer = {
        "  icequill customer forget mill-lane-bakery", "  icequill customer forget mill-lane-bakery --yes"})
final class CustomerForgetCommand extends EntryCommand {

    @Parameters(paramLabel = "ID", description = "The customer, by id.")
    private String id = "";

    @Option(names = "--yes", description = "Does not ask.")
    private boolean yes;

    CustomerForgetCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Checked<Forgotten> sure = yes
                ? office().forget(id)
                : office().wouldForget(id).then(this::asked).then(blanked -> office().forget(id));
        return show(sure, Forgotten::json, this::tell);
    }

    /** Whoever means it types the id again. */
    private Checked<Forgotten> asked(Forgotten blanked) {
        Console console = System.console();
        String answer = console == null ? null : console.readLine("%s", question(blanked));
        return id.equals(answer)
                ? Checked.sound(blanked)
                : Checked.faulty(new Problem(Code.MISSING, Place.NOWHERE, question(blanked) + "nobody did",
                        "the id as an answer, or --yes"));
    }

    private static String question(Forgotten blanked) {
        return "This blanks customer " + blanked.customer() + " with " + blanked.sites().size()
                + " sites and their visits for good. Type the id to go on: ";
    }

    private void tell(Forgotten forgotten) {
        print("Forgotten: " + forgotten.customer() + ", with " + forgotten.sites().size() + " sites and their visits");
        forgotten.keptUntil().ifPresent(day -> print(forgotten.papers()
                + " papers stay as they were issued, the last until " + day));
        forgotten.files().forEach(file -> print("Still there, for you to delete: " + file));
    }
}

package icequill.cli.entry;

import icequill.answer.ForgetResult;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.Clock;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Forgets a customer. */
@Command(name = "forget", mixinStandardHelpOptions = true, description = "Blanks what is personal about a customer: names, addresses, bill-to, numbers, notes and visits. Issued papers stay as they are for the years that shop.yaml sets (book: retentionYears); nothing is ever deleted by itself. This cannot be undone, so it asks first.", footerHeading = "%nExamples:%n", footer = {
        "  icequill customer forget mill-lane-bakery", "  icequill customer forget mill-lane-bakery --yes"})
public final class CustomerForgetCommand extends EntryCommand {

    @Parameters(paramLabel = "ID", description = "The customer, by id.")
    private String id = "";

    @Option(names = "--yes", description = "Does not ask.")
    private boolean yes;

    public CustomerForgetCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Validated<ForgetResult> sure = yes
                ? office().forget(id)
                : office().wouldForget(id).then(this::asked).then(blanked -> office().forget(id));
        return show(sure, this::tell);
    }

    /** Whoever means it types the id again. */
    private Validated<ForgetResult> asked(ForgetResult blanked) {
        return answer(blanked).filter(id::equals).isPresent()
                ? Validated.valid(blanked)
                : Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, question(blanked) + "nobody did",
                        "the id as an answer, or --yes"));
    }

    /** Without a terminal there is no console, or one that reads nothing: either way nobody answers. */
    private static Optional<String> answer(ForgetResult blanked) {
        return Optional.ofNullable(System.console()).map(console -> console.readLine("%s", question(blanked)));
    }

    private static String question(ForgetResult blanked) {
        return "This blanks customer " + blanked.forgotten() + " with " + blanked.sites().size()
                + " sites and their visits for good. Type the id to go on: ";
    }

    private void tell(ForgetResult forgotten) {
        print("Forgotten: " + forgotten.forgotten() + ", with " + forgotten.sites().size() + " sites and their visits");
        forgotten.keptUntil().ifPresent(day -> print(forgotten.papers()
                + " papers stay as they were issued, the last until " + day));
        forgotten.files().forEach(file -> print("Still there, for you to delete: " + file));
    }
}

package icequill.cli.claim;

import icequill.answer.claim.ClaimList;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.claim.ClaimOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists claims. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists claims with whatever is to be done next, and visits whose work under a warranty nobody claimed.", footerHeading = "%nExamples:%n", footer = {
        "  icequill claim list", "  icequill claim list --all"})
public final class ClaimListCommand extends BookCommand {

    @Option(names = "--all", description = "Those too that are paid or refused.")
    private boolean all;

    public ClaimListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Validated<ClaimList> claims = ClaimOffice.of(folder(), clock()).claims(all);
        return show(claims, list -> {
            print(Table.of(list.head(), list.rows(), 4));
            if (!list.unclaimed().isEmpty()) {
                print("Not claimed: " + String.join(", ", list.unclaimed()));
            }
        });
    }
}

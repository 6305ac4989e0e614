package icequill.cli.claim;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.claim.ClaimOffice;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a claim. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows where a claim stands.", footerHeading = "%nExample:%n", footer = "  icequill claim show warranty-pump-bakery")
public final class ClaimShowCommand extends BookCommand {

    @Parameters(paramLabel = "CLAIM", description = "The claim, called as its visit is.")
    private String claim = "";

    public ClaimShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(ClaimOffice.of(folder(), clock()).claim(claim), sheet -> print(Table.of(sheet.rows(), 2)));
    }
}

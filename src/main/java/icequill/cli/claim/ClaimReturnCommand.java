package icequill.cli.claim;

import icequill.answer.claim.ClaimSheet;
import icequill.life.claim.ClaimEvent;
import icequill.office.claim.ClaimOffice;
import icequill.problem.Validated;
import java.time.Clock;
import java.time.LocalDate;
import picocli.CommandLine.Command;

/** Notes that the failed part went back. */
@Command(name = "return", mixinStandardHelpOptions = true, description = "Notes that the part that failed went back to the payer.", footerHeading = "%nExample:%n", footer = "  icequill claim return warranty-pump-bakery")
public final class ClaimReturnCommand extends ClaimStepCommand {

    public ClaimReturnCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<ClaimSheet> step(ClaimOffice office, String id, LocalDate when) {
        return office.step(id, new ClaimEvent.PartReturn(when));
    }
}

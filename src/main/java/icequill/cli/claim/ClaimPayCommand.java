package icequill.cli.claim;

import icequill.answer.claim.ClaimSheet;
import icequill.office.claim.ClaimOffice;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Notes what came in for a claim. */
@Command(name = "pay", mixinStandardHelpOptions = true, description = "Notes what came in for a claim, which ends it.", footerHeading = "%nExample:%n", footer = "  icequill claim pay warranty-pump-bakery 148.50")
public final class ClaimPayCommand extends ClaimStepCommand {

    @Parameters(index = "1", paramLabel = "AMOUNT", description = "What came in.")
    private BigDecimal amount = BigDecimal.ZERO;

    public ClaimPayCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<ClaimSheet> step(ClaimOffice office, String id, LocalDate when) {
        return office.paid(id, when, amount);
    }
}

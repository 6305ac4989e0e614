package icequill.cli.claim;

import icequill.answer.claim.ClaimSheet;
import icequill.life.claim.ClaimEvent;
import icequill.office.claim.ClaimOffice;
import icequill.problem.Validated;
import java.time.Clock;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Notes that a payer refused. */
@Command(name = "refuse", mixinStandardHelpOptions = true, description = "Notes that the payer refuses a claim, which ends it. Nothing is billed to the customer by that: what he may be charged is for a person to decide.", footerHeading = "%nExample:%n", footer = "  icequill claim refuse warranty-pump-bakery --reason \"Scale, not a fault.\"")
public final class ClaimRefuseCommand extends ClaimStepCommand {

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why; the book keeps it.")
    private String reason = "";

    public ClaimRefuseCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<ClaimSheet> step(ClaimOffice office, String id, LocalDate when) {
        return office.step(id, new ClaimEvent.Denial(when, reason));
    }
}

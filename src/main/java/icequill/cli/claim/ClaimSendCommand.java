package icequill.cli.claim;

import icequill.answer.claim.ClaimSheet;
import icequill.life.claim.ClaimEvent;
import icequill.office.claim.ClaimOffice;
import icequill.problem.Validated;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Notes that a claim was sent. */
@Command(name = "send", mixinStandardHelpOptions = true, description = "Notes that a claim was sent to its payer.", footerHeading = "%nExample:%n", footer = "  icequill claim send warranty-pump-bakery --reference RMA-118")
public final class ClaimSendCommand extends ClaimStepCommand {

    @Option(names = "--reference", paramLabel = "TEXT", description = "Under which reference the payer has it.")
    private @Nullable String reference;

    public ClaimSendCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<ClaimSheet> step(ClaimOffice office, String id, LocalDate when) {
        return office.step(id, new ClaimEvent.Dispatch(when, Optional.ofNullable(reference)));
    }
}

package icequill.cli.visit;

import icequill.answer.call.CallSheet;
import icequill.office.call.CallOffice;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Records who allows more. */
@Command(name = "approve", mixinStandardHelpOptions = true, description = "Records who allows more than the limit of a call, how much and when. A visit to the call that costs more is not recorded before.", footerHeading = "%nExample:%n", footer = "  icequill call approve hotel-fernhill-2026-08-31 --by \"Chef Bram\" --limit 450")
public final class CallApproveCommand extends CallStepCommand {

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who of the customer's allows it.")
    private String by = "";

    @Option(names = "--limit", required = true, paramLabel = "AMOUNT", description = "Not to be exceeded, before tax.")
    private BigDecimal limit = BigDecimal.ZERO;

    @Option(names = "--date", paramLabel = "D", description = "The day on which it was said. Default: today.")
    private @Nullable LocalDate on;

    public CallApproveCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<CallSheet> step(CallOffice office, String id) {
        Map<String, String> told = told("by", by, "limit", limit.toPlainString());
        return office.approve(id, put(told, "on", on), Optional.empty());
    }
}

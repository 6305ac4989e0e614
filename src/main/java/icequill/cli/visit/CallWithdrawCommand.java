package icequill.cli.visit;

import icequill.answer.call.CallSheet;
import icequill.office.call.CallOffice;
import icequill.problem.Validated;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Withdraws a call. */
@Command(name = "withdraw", mixinStandardHelpOptions = true, description = "Withdraws a call that nobody goes to. The book keeps it, and why.", footerHeading = "%nExample:%n", footer = "  icequill call withdraw crumb-lane-bakery-2026-09-01 --reason \"It runs again.\"")
public final class CallWithdrawCommand extends CallStepCommand {

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why; the book keeps it.")
    private String reason = "";

    public CallWithdrawCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<CallSheet> step(CallOffice office, String id) {
        return office.withdraw(id, reason.isBlank() ? Map.of() : Map.of("reason", reason), Optional.empty());
    }
}

package icequill.cli.billing;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a payment back. */
@Command(name = "withdraw", mixinStandardHelpOptions = true, description = "Takes back a payment that was noted by mistake, or that the bank returned: it counts no more. The book keeps it, and why.", footerHeading = "%nExample:%n", footer = "  icequill payment withdraw check-2207 --reason \"The check was returned.\"")
public final class PaymentWithdrawCommand extends PaymentEntryCommand {

    @Parameters(paramLabel = "ID", description = "The payment, by id.")
    private String id = "";

    @Option(names = "--reason", paramLabel = "TEXT", description = "Why; the book keeps it.")
    private String reason = "";

    public PaymentWithdrawCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return showPayment(payments().withdraw(id, reason));
    }
}

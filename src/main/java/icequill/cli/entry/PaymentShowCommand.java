package icequill.cli.entry;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a payment. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows a payment, what it is for, and whether it was withdrawn.")
public final class PaymentShowCommand extends EntryCommand {

    @Parameters(paramLabel = "ID", description = "The payment, by id.")
    private String id = "";

    public PaymentShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return showPayment(payments().show(id));
    }
}

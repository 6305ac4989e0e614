package icequill.cli.billing;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a payment. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows a payment, what it is for, and whether it was withdrawn.", footerHeading = "%nExample:%n", footer = "  icequill payment show check-2207")
public final class PaymentShowCommand extends PaymentEntryCommand {

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

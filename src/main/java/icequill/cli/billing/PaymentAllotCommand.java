package icequill.cli.billing;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes what of a payment is on account for invoices. */
@Command(name = "allot", mixinStandardHelpOptions = true, description = "Takes what of a payment is on account for invoices.", footerHeading = "%nExample:%n", footer = "  icequill payment allot check-2207 --for INV-2026-00022")
public final class PaymentAllotCommand extends PaymentEntryCommand {

    @Parameters(paramLabel = "ID", description = "The payment, by id.")
    private String id = "";

    @Option(names = "--for", paramLabel = "TEXT", description = "Invoices that it is for, in order, as with add. Without it those that are likely meant.")
    private @Nullable String bills;

    @Option(names = "--date", paramLabel = "D", description = "The day from which they count as paid. Default: today.")
    private @Nullable LocalDate day;

    public PaymentAllotCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return showPayment(payments().allot(id, Optional.ofNullable(bills), Optional.ofNullable(day)));
    }
}

package icequill.cli.billing;

import icequill.answer.EntryFlag;
import icequill.cli.terminal.EntryFlags;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Notes a payment. */
@Command(name = "add", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfPayment.class, description = "Notes a payment in the shop's book. Without --for it is taken to be for the invoices that its reference names, else for the fewest and oldest that come to it exactly, else for those longest due; what is left stays on account.", footerHeading = "%nExamples:%n", footer = {
        "  icequill payment add fernhill-hotels 350.00 --way check --reference \"check 2206\"",
        "  icequill payment add fernhill-hotels 700.00 --id check-2207 --for \"INV-2026-00011 | amount: 301.13; INV-2026-00014\""})
public final class PaymentAddCommand extends PaymentEntryCommand {

    @Parameters(index = "0", paramLabel = "CUSTOMER", description = "Whose payment it is, by id.")
    private String customer = "";

    @Parameters(index = "1", paramLabel = "AMOUNT", description = "In the shop's currency, such as 350.00.")
    private String amount = "";

    @Option(names = "--id", paramLabel = "ID", description = "What the payment is called in the book. Default: the customer and the day.")
    private @Nullable String id;

    public PaymentAddCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return showPayment(payments().add(Optional.ofNullable(id), customer, amount,
                EntryFlags.given(spec(), EntryFlag.PAYMENT)));
    }
}

package icequill.cli.billing;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.BookingOptions;
import icequill.cli.terminal.PaperName;
import icequill.office.billing.CreditOffice;
import icequill.office.billing.CreditOptions;
import icequill.request.CreditPart;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Issues an invoice anew. */
@Command(name = "reissue", mixinStandardHelpOptions = true, description = "Gives a whole invoice back and issues it anew in the same step, with another purchase order or addressee.", footerHeading = "%nExamples:%n", footer = {
        "  icequill invoice reissue INV-2026-00001 --purchase-order PO-7731 --due keep --reason \"Wrong order number.\"",
        "  icequill invoice reissue INV-2026-00002 --bill-to --due restart --reason \"Wrong addressee.\""})
public final class InvoiceReissueCommand extends BookCommand {

    @Mixin
    private PaperName invoice = new PaperName();

    @Option(names = "--purchase-order", paramLabel = "TEXT", description = "The right purchase order.")
    private @Nullable String purchaseOrder;

    @Option(names = "--bill-to", paramLabel = "CUSTOMER", arity = "0..1", fallbackValue = "", description = "Who is billed instead, a customer of the book; without an id, the site's own as it stands now.")
    private @Nullable String billTo;

    @Option(names = "--due", required = true, paramLabel = "WHEN", description = "Keep the day on which the first was due, or restart the days to pay. One of: ${COMPLETION-CANDIDATES}")
    private CreditOptions.Due due = CreditOptions.Due.KEEP;

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why the first is given back, printed for the customer.")
    private String reason = "";

    @Mixin
    private BookingOptions booking = new BookingOptions();

    public InvoiceReissueCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return booking.show(CreditOffice.of(folder(), clock()).credit(invoice.text(),
                new CreditOptions(List.of(), CreditPart.Rest.REST, reason, booking.day(folder(), clock()),
                        Optional.of(new CreditOptions.Reissue(Optional.ofNullable(purchaseOrder),
                                Optional.ofNullable(billTo), due)),
                        booking.booking(false))),
                printout());
    }
}

package icequill.cli.paper;

import icequill.answer.WrittenPaper;
import icequill.cli.terminal.BookingOptions;
import icequill.cli.terminal.PaperCommand;
import icequill.cli.terminal.Printout;
import icequill.money.Amounts;
import icequill.office.Office;
import icequill.office.billing.CreditOffice;
import icequill.office.billing.CreditOptions;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.math.BigDecimal;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Gives an invoice back. */
@Command(name = "credit", mixinStandardHelpOptions = true, description = "Gives an invoice of the book back, in whole or by lines, and where asked issues it anew in the same step. With a FILE, for shops without a book, writes the credit note into papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill credit INV-2026-00012 --reason \"Charged twice.\"                the whole invoice",
        "  icequill credit INV-2026-00012 --lines 3 --reason \"No evening work.\"    as the invoice counts them",
        "  icequill credit INV-2026-00012 --amount 25 --reason \"We came late.\"       part of an invoice's one line, before tax",
        "  icequill credit INV-2026-00012 --lines 3 --amount 25 --reason \"...\"      part of its third line",
        "  icequill credit INV-2026-00012 --agreement crumb-lane-bakery              how much its changes give back",
        "  icequill credit INV-2026-00012 --reissue --purchase-order PO-7731 --due keep --reason \"Wrong order number.\"",
        "  icequill credit INV-2026-00012 --reissue --bill-to --due restart --reason \"Wrong addressee.\"",
        "  icequill credit wrong-minutes.yaml --number C-2026-001 --date 2026-05-20"})
public final class CreditCommand extends PaperCommand {

    @Option(names = "--lines", paramLabel = "N", split = ",", description = "The lines to give back, with commas between. Default: all that are left.")
    private List<Integer> lines = new ArrayList<>();

    @Option(names = "--amount", paramLabel = "A", description = "A part of one line, before tax; its tax goes back with it. Default: all that is left.")
    private @Nullable BigDecimal amount;

    @Option(names = "--agreement", paramLabel = "FORM", description = "Says how much the changes of an agreement give back of the payment, and gives nothing back itself.")
    private @Nullable String agreement;

    @Option(names = "--reason", paramLabel = "TEXT", description = "Why, printed for the customer.")
    private String reason = "";

    @Option(names = "--reissue", description = "Issue the invoice anew, with another purchase order or addressee.")
    private boolean reissue;

    @Option(names = "--purchase-order", paramLabel = "TEXT", description = "With --reissue: the right purchase order.")
    private @Nullable String purchaseOrder;

    @Option(names = "--bill-to", paramLabel = "CUSTOMER", arity = "0..1", fallbackValue = "", description = "With --reissue: who is billed instead, a customer of the book; without an id, the site's own as it stands now.")
    private @Nullable String billTo;

    @Option(names = "--due", paramLabel = "WHEN", description = "With --reissue: keep the day on which the first was due, or restart the days to pay. One of: ${COMPLETION-CANDIDATES}")
    private CreditOptions.@Nullable Due due;

    @Mixin
    private BookingOptions booking = new BookingOptions();

    public CreditCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        if (from() instanceof FormName.InFile) {
            if (reissue || purchaseOrder != null || billTo != null || due != null || !reason.isEmpty()
                    || !lines.isEmpty() || amount != null || agreement != null) {
                throw new ParameterException(spec().commandLine(),
                        "a FILE says itself what goes back and why: --lines, --amount, --agreement, --reason, --reissue,"
                                + " --purchase-order, --bill-to and --due go with a number of the book");
            }
            return super.call();
        }
        String changes = agreement;
        String number = from().text();
        if (changes != null) {
            return propose(number, changes);
        }
        CreditOffice office = CreditOffice.of(folder(), clock());
        return booking
                .show(office.credit(number, new CreditOptions(lines, Optional.ofNullable(amount), reason,
                        paperOptions().date(), again(), booking.booking(false))), printout());
    }

    private int propose(String number, String changes) {
        if (!lines.isEmpty() || amount != null || reissue) {
            throw new ParameterException(spec().commandLine(),
                    "--agreement says how much goes back, so it does not go with --lines, --amount or --reissue");
        }
        Printout printout = printout();
        return printout.answer(CreditOffice.of(folder(), clock()).byChanges(number, from(changes),
                paperOptions().date()), credit -> {
                    printout.out().println(credit.text());
                    if (credit.amount().isPositive()) {
                        printout.out().println("To give it back: icequill credit " + credit.invoice()
                                + " --amount " + Amounts.plain(credit.amount()) + " --reason \"...\"");
                    }
                });
    }

    private Optional<CreditOptions.Reissue> again() {
        if (!reissue) {
            if (purchaseOrder != null || billTo != null || due != null) {
                throw new ParameterException(spec().commandLine(),
                        "--purchase-order, --bill-to and --due say how the invoice is issued anew, so they need --reissue");
            }
            return Optional.empty();
        }
        if (due == null) {
            throw new ParameterException(spec().commandLine(),
                    "--reissue needs --due keep or --due restart: when is the new invoice to be paid?");
        }
        return Optional.of(new CreditOptions.Reissue(Optional.ofNullable(purchaseOrder), Optional.ofNullable(billTo),
                due));
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return office.credit(from, options);
    }
}

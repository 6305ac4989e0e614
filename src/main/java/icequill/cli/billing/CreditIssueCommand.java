package icequill.cli.billing;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.BookingOptions;
import icequill.cli.terminal.PaperName;
import icequill.money.Percent;
import icequill.office.billing.CreditOffice;
import icequill.office.billing.CreditOptions;
import icequill.request.CreditPart;
import java.math.BigDecimal;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Gives an invoice back. */
@Command(name = "issue", mixinStandardHelpOptions = true, description = "Gives an invoice of the book back, in whole or by lines. To issue it anew in the same step: icequill invoice reissue.", footerHeading = "%nExamples:%n", footer = {
        "  icequill credit issue INV-2026-00015 --reason \"Charged twice.\"                the whole invoice",
        "  icequill credit issue INV-2026-00012 --lines 3 --reason \"No evening work.\"    as the invoice counts them",
        "  icequill credit issue INV-2026-00012 --lines 1 --amount 25 --reason \"...\"     part of its first line, before tax",
        "  icequill credit issue INV-2026-00012 --lines 2 --quantity 15 --reason \"...\"   so many of its second line, as minutes",
        "  icequill credit issue INV-2026-00012 --percent 10 --reason \"We came late.\"    a tenth of every line, as goodwill",
        "  icequill credit issue INV-2026-00012 --amount 50 --reason \"We came late.\"     shared over all of its lines"})
public final class CreditIssueCommand extends BookCommand {

    @Mixin
    private PaperName invoice = new PaperName();

    @Option(names = "--lines", paramLabel = "N", split = ",", description = "The lines to give back, with commas between. Default: all that are left.")
    private List<Integer> lines = new ArrayList<>();

    @ArgGroup
    private Part part = new Part();

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why, printed for the customer.")
    private String reason = "";

    /** What of the lines goes back; all that is left where nothing says so. */
    private static final class Part {

        @Option(names = "--amount", paramLabel = "A", description = "So much before tax, after a discount on the whole invoice, shared over these lines by what is left of each; its tax goes back with it. Default: all that is left.")
        private @Nullable BigDecimal amount;

        @Option(names = "--percent", paramLabel = "P", converter = PercentOfLine.class, description = "A part of what each of these lines was billed at, above 0 and up to 100.")
        private @Nullable Percent percent;

        @Option(names = "--quantity", paramLabel = "Q", description = "So many of one line, in the unit that it is counted in.")
        private @Nullable BigDecimal quantity;

        CreditPart of() {
            return amount != null
                    ? new CreditPart.OfAmount(amount)
                    : percent != null
                            ? new CreditPart.OfPercent(percent)
                            : quantity != null ? new CreditPart.OfQuantity(quantity) : CreditPart.Rest.REST;
        }
    }

    /** Reads a percentage. */
    static final class PercentOfLine implements ITypeConverter<Percent> {
        @Override
        public Percent convert(String text) {
            BigDecimal value = new BigDecimal(text);
            if (value.signum() <= 0 || value.compareTo(Percent.HUNDRED.value()) > 0) {
                throw new TypeConversionException("'" + text + "' is no percentage above 0 and up to 100");
            }
            return new Percent(value);
        }
    }

    @Mixin
    private BookingOptions booking = new BookingOptions();

    public CreditIssueCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return booking.show(CreditOffice.of(folder(), clock()).credit(invoice.text(),
                new CreditOptions(lines, part.of(), reason, booking.day(folder(), clock()),
                        Optional.empty(), booking.booking(false))),
                printout());
    }
}

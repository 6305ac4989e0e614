package icequill.cli.billing;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.BookingOptions;
import icequill.cli.terminal.PaperName;
import icequill.office.billing.CreditOffice;
import icequill.office.billing.CreditOptions;
import java.math.BigDecimal;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Gives an invoice back. */
@Command(name = "issue", mixinStandardHelpOptions = true, description = "Gives an invoice of the book back, in whole or by lines. To issue it anew in the same step: icequill invoice reissue.", footerHeading = "%nExamples:%n", footer = {
        "  icequill credit issue INV-2026-00015 --reason \"Charged twice.\"                the whole invoice",
        "  icequill credit issue INV-2026-00012 --lines 3 --reason \"No evening work.\"    as the invoice counts them",
        "  icequill credit issue INV-2026-00017 --amount 25 --reason \"We came late.\"     part of an invoice's one line, before tax",
        "  icequill credit issue INV-2026-00012 --lines 1 --amount 25 --reason \"...\"     part of its first line"})
public final class CreditIssueCommand extends BookCommand {

    @Mixin
    private PaperName invoice = new PaperName();

    @Option(names = "--lines", paramLabel = "N", split = ",", description = "The lines to give back, with commas between. Default: all that are left.")
    private List<Integer> lines = new ArrayList<>();

    @Option(names = "--amount", paramLabel = "A", description = "A part of one line, before tax; its tax goes back with it. Default: all that is left.")
    private @Nullable BigDecimal amount;

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why, printed for the customer.")
    private String reason = "";

    @Mixin
    private BookingOptions booking = new BookingOptions();

    public CreditIssueCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return booking.show(CreditOffice.of(folder(), clock()).credit(invoice.text(),
                new CreditOptions(lines, Optional.ofNullable(amount), reason, booking.day(folder(), clock()),
                        Optional.empty(), booking.booking(false))),
                printout());
    }
}

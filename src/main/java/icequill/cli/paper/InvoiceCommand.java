package icequill.cli.paper;

import icequill.answer.WrittenPaper;
import icequill.cli.terminal.PaperCommand;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the invoice of one visit. */
@Command(name = "invoice", mixinStandardHelpOptions = true, description = "Writes the invoice of a visit, or of an agreement's payment, as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill invoice late-call                        a draft, marked as one",
        "  icequill invoice late-call --number 2026-0114 --date 2026-05-14",
        "  icequill invoice late-call --lang es --html",
        "  icequill invoice late-call --number 2026-0114 --xml   UBL beside the PDF",
        "  icequill invoice crumb-lane-bakery --payment 2 --number 2026-0131 --date 2026-09-01"})
public final class InvoiceCommand extends PaperCommand {

    @Option(names = "--payment", paramLabel = "N", description = "FILE is an agreement: bill its payment N, counted from 1.")
    private @Nullable Integer payment;

    public InvoiceCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return payment == null ? office.invoice(from, options) : office.plans().payment(from, payment, options);
    }
}

package icequill.cli;

import icequill.office.Office;
import icequill.office.WrittenPaper;
import icequill.problem.Checked;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Writes the invoice of one visit. */
@Command(name = "invoice", mixinStandardHelpOptions = true, description = "Writes the invoice of a visit as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill invoice visits/late-call.yaml                        a draft, marked as one",
        "  icequill invoice visits/late-call.yaml --number 2026-0114 --date 2026-05-14",
        "  icequill invoice visits/late-call.yaml --lang es --html",
        "  icequill invoice visits/late-call.yaml --number 2026-0114 --xml   UBL beside the PDF"})
final class InvoiceCommand extends PaperCommand {

    InvoiceCommand(Clock clock) {
        super(clock);
    }

    @Override
    Checked<WrittenPaper> write(Office office, Path from, Office.Wish wish) {
        return office.invoice(from, wish);
    }
}

package icequill.cli.billing;

import icequill.answer.WrittenPaper;
import icequill.cli.terminal.PaperCommand;
import icequill.cli.terminal.VisitName;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the draft of an invoice. */
@Command(name = "draft", mixinStandardHelpOptions = true, description = "Writes the invoice of a visit, or of an agreement's installment, as PDF into the shop folder's papers/, marked as a draft.", footerHeading = "%nExamples:%n", footer = {
        "  icequill invoice draft late-call", "  icequill invoice draft late-call --lang es --html",
        "  icequill invoice draft crumb-lane-bakery --installment 2 --date 2026-09-01"})
public final class InvoiceDraftCommand extends PaperCommand {

    @Parameters(paramLabel = "NAME", completionCandidates = VisitName.Known.class, description = "The visit, or with --installment the agreement: its id in the book, or a file.")
    private String name = "";

    @Option(names = "--installment", paramLabel = "N", description = "NAME is an agreement: its installment N, counted from 1.")
    private @Nullable Integer installment;

    public InvoiceDraftCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected String named() {
        return name;
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return installment == null
                ? office.invoice(from, options)
                : office.plans().installment(from, installment, options);
    }
}

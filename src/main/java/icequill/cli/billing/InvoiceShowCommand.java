package icequill.cli.billing;

import icequill.cli.terminal.PaperName;
import icequill.cli.terminal.ShownCommand;
import icequill.office.care.Shows;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows an invoice. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows what the book knows of an invoice: whom it went to, its lines and taxes, what it bills, what corrects or replaces it, and where its PDF lies.", footerHeading = "%nExamples:%n", footer = {
        "  icequill invoice show INV-2026-00012", "  icequill invoice show 12"})
public final class InvoiceShowCommand extends ShownCommand {

    @Mixin
    private PaperName paper = new PaperName();

    public InvoiceShowCommand(Clock clock) {
        super(clock, Shows.INVOICE);
    }

    @Override
    protected String named() {
        return paper.text();
    }
}

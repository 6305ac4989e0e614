package icequill.cli.billing;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on invoices. */
@Command(name = "invoice", mixinStandardHelpOptions = true, subcommands = {InvoiceDraftCommand.class,
        InvoiceDueCommand.class,
        InvoiceIssueCommand.class, InvoiceListCommand.class, InvoiceReissueCommand.class,
        InvoiceShowCommand.class}, description = "Bills visits and the installments of agreements.", footerHeading = "%nExamples:%n", footer = {
                "  icequill invoice draft late-call             a draft to look at",
                "  icequill invoice issue late-call             with the next number, in the book",
                "  icequill invoice issue --all --dry-run       what billing all would give",
                "  icequill invoice list --state open"})
public final class InvoiceCommand extends Noun {}

package icequill.cli.billing;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on credit notes. */
@Command(name = "credit", mixinStandardHelpOptions = true, subcommands = {CreditIssueCommand.class,
        CreditListCommand.class, CreditProposeCommand.class,
        CreditShowCommand.class}, description = "Gives invoices of the book back by credit notes, in whole or in part.", footerHeading = "%nExamples:%n", footer = {
                "  icequill credit issue INV-2026-00012 --reason \"Charged twice.\"",
                "  icequill credit propose INV-2026-00012 --changes crumb-lane-bakery"})
public final class CreditCommand extends Noun {}

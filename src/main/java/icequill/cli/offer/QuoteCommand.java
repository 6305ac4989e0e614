package icequill.cli.offer;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on quotes. */
@Command(name = "quote", mixinStandardHelpOptions = true, subcommands = {QuoteAcceptCommand.class,
        QuoteDeclineCommand.class, QuoteDraftCommand.class,
        QuoteEarningsCommand.class, QuoteIssueCommand.class, QuoteListCommand.class, QuoteOutcomesCommand.class,
        QuotePriceCommand.class,
        QuoteShowCommand.class}, description = "Quotes repairs, and maintenance with all its choices.", footerHeading = "%nExamples:%n", footer = {
                "  icequill quote draft float-switch            a draft to look at",
                "  icequill quote price crumb-lane-plan         all ways of care side by side",
                "  icequill quote earnings float-switch         what it costs and earns",
                "  icequill quote issue float-switch            with the next number, in the book",
                "  icequill quote list --month 2026-05"})
public final class QuoteCommand extends Noun {}

package icequill.cli.visit;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on calls. */
@Command(name = "call", mixinStandardHelpOptions = true, subcommands = {CallListCommand.class,
        CallReviewCommand.class}, description = "Lists what customers called for, and holds it against what was to be expected.", footerHeading = "%nExamples:%n", footer = {
                "  icequill call list --month 2026-05", "  icequill call review"})
public final class CallCommand extends Noun {}

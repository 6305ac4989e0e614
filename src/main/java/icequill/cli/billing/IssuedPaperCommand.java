package icequill.cli.billing;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on issued papers of whatever kind. */
@Command(name = "paper", mixinStandardHelpOptions = true, subcommands = {PaperReprintCommand.class,
        PaperReworkCommand.class,
        PaperShowCommand.class}, description = "Shows papers that were issued, prints them again, and works them out again. To look for some: icequill find.", footerHeading = "%nExamples:%n", footer = {
                "  icequill paper show INV-2026-00012", "  icequill paper reprint INV-2026-00012",
                "  icequill paper rework INV-2026-00012"})
public final class IssuedPaperCommand extends Noun {}

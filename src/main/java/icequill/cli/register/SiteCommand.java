package icequill.cli.register;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on the book's sites. */
@Command(name = "site", mixinStandardHelpOptions = true, subcommands = {SiteAddCommand.class, SiteChangeCommand.class,
        SiteListCommand.class, SiteCardCommand.class,
        SiteShowCommand.class, SiteHistoryCommand.class,
        SiteMergeCommand.class}, description = "Keeps the sites of the shop's book.", footerHeading = "%nExamples:%n", footer = {
                "  icequill site change mill-lane --parking \"rear dock, before 9\"",
                "  icequill site list alderton",
                "  icequill site show mill-lane",
                "  icequill site history mill-lane --month 2026-05",
                "  icequill site merge mill-lane-2 --into mill-lane"})
public final class SiteCommand extends Noun {}

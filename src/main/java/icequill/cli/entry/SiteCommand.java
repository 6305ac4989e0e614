package icequill.cli.entry;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The commands on the book's sites. */
@Command(name = "site", mixinStandardHelpOptions = true, subcommands = {SiteAddCommand.class, SiteChangeCommand.class,
        SiteListCommand.class,
        SiteShowCommand.class, SiteHistoryCommand.class,
        SiteMergeCommand.class}, description = "Keeps the sites of the shop's book.", footerHeading = "%nExamples:%n", footer = {
                "  icequill site change mill-lane --parking \"rear dock, before 9\"",
                "  icequill site list alderton",
                "  icequill site show mill-lane",
                "  icequill site history mill-lane --month 2026-05",
                "  icequill site merge mill-lane-2 --into mill-lane"})
public final class SiteCommand implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}

package icequill.cli.register;

import icequill.cli.terminal.SiteName;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows a site of the book. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows all that the book has of a site.", footerHeading = "%nExample:%n", footer = "  icequill site show hotel-fernhill")
public final class SiteShowCommand extends EntryCommand {

    @Mixin
    private SiteName site = new SiteName();

    public SiteShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return showEntry(lists().site(id(site.text())));
    }
}

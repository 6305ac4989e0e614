package icequill.cli.entry;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a site of the book. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows all that the book has of a site.")
public final class SiteShowCommand extends EntryCommand {

    @Parameters(paramLabel = "ID", description = "What the site is called in the book: small letters, digits and hyphens.")
    private String id = "";

    public SiteShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return showEntry(lists().site(id));
    }
}

package icequill.cli.register;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the book's sites. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the sites of the shop's book.", footerHeading = "%nExamples:%n", footer = {
        "  icequill site list",
        "  icequill site list alderton"})
public final class SiteListCommand extends EntryCommand {

    @Parameters(paramLabel = "TEXT", arity = "0..1", description = "Only those that have this text in one of the columns.")
    private String text = "";

    public SiteListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return list(lists().sites(text));
    }
}

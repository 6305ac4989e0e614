package icequill.cli.register;

import icequill.cli.terminal.SiteName;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows a machine of the book. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows all that the book has of a machine.", footerHeading = "%nExample:%n", footer = "  icequill machine show hotel-fernhill lobby-bar")
public final class MachineShowCommand extends EntryCommand {

    @Mixin
    private SiteName site = new SiteName();

    @Parameters(index = "1", paramLabel = "ID", description = "What the machine is called within its site.")
    private String id = "";

    public MachineShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return showEntry(lists().machine(id(site.text()), id));
    }
}

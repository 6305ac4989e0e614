package icequill.cli.entry;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a machine of the book. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows all that the book has of a machine.")
public final class MachineShowCommand extends EntryCommand {

    @Parameters(index = "0", paramLabel = "SITE", description = "The site, by id.")
    private String site = "";

    @Parameters(index = "1", paramLabel = "ID", description = "What the machine is called within its site.")
    private String id = "";

    public MachineShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return showEntry(lists().machine(site, id));
    }
}

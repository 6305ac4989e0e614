package icequill.cli.entry;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a customer of the book. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows all that the book has of a customer.")
public final class CustomerShowCommand extends EntryCommand {

    @Parameters(paramLabel = "ID", description = "What the customer is called in the book: small letters, digits and hyphens.")
    private String id = "";

    public CustomerShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return showEntry(lists().customer(id));
    }
}

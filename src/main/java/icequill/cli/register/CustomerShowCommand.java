package icequill.cli.register;

import icequill.cli.terminal.CustomerName;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows a customer of the book. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows all that the book has of a customer.", footerHeading = "%nExample:%n", footer = "  icequill customer show fernhill-hotels")
public final class CustomerShowCommand extends EntryCommand {

    @Mixin
    private CustomerName customer = new CustomerName();

    public CustomerShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return showEntry(lists().customer(id(customer.text())));
    }
}

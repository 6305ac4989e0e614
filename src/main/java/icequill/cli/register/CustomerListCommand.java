package icequill.cli.register;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the book's customers. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the customers of the shop's book.", footerHeading = "%nExamples:%n", footer = {
        "  icequill customer list",
        "  icequill customer list bakery"})
public final class CustomerListCommand extends EntryCommand {

    @Parameters(paramLabel = "TEXT", arity = "0..1", description = "Only those that have this text in one of the columns.")
    private String text = "";

    public CustomerListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return list(lists().customers(text));
    }
}

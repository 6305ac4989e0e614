package icequill.cli.register;

import icequill.answer.EntryFlag;
import icequill.cli.terminal.EntryFlags;
import icequill.office.register.EntryChange;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds a customer to the book. */
@Command(name = "add", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfCustomer.class, description = "Adds a customer to the shop's book.", footerHeading = "%nExample:%n", footer = "  icequill customer add mill-lane --name \"Mill Lane Bakery\" --street \"4 Mill Lane\" --city Alderton --region NY --postal-code 10999 --country US")
public final class CustomerAddCommand extends EntryCommand {

    @Parameters(paramLabel = "ID", description = "What the customer is called in the book: small letters, digits and hyphens.")
    private String id = "";

    @Option(names = "--parent", paramLabel = "ID", description = "The account that the customer belongs to, which is billed where the customer has no bill-to.")
    private @Nullable String parent;

    public CustomerAddCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return stored(office().customer(new EntryChange(id, true, EntryFlags.given(spec(), EntryFlag.CUSTOMER)),
                Optional.ofNullable(parent), Optional.empty()));
    }
}

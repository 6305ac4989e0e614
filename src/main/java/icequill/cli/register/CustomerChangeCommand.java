package icequill.cli.register;

import icequill.answer.EntryFlag;
import icequill.cli.terminal.CustomerName;
import icequill.cli.terminal.EntryFlags;
import icequill.office.register.EntryChange;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Changes a customer of the book. */
@Command(name = "change", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfCustomer.class, description = "Changes what is given, and leaves the rest; an empty text takes a value out.", footerHeading = "%nExamples:%n", footer = {
        "  icequill customer change mill-lane --telephone 607-555-0142",
        "  icequill customer change mill-lane --attention Accounts --from 2027-08-01   another is billed from that day on"})
public final class CustomerChangeCommand extends EntryCommand {

    @Mixin
    private CustomerName customer = new CustomerName();

    @Option(names = "--parent", paramLabel = "ID", description = "The account that the customer belongs to, which is billed where the customer has no bill-to.")
    private @Nullable String parent;

    @Option(names = "--from", paramLabel = "D", description = "The day from which another is billed. Without it, who is billed now is corrected.")
    private @Nullable LocalDate from;

    public CustomerChangeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Map<String, String> given = EntryFlags.given(spec(), EntryFlag.CUSTOMER);
        return changed(!given.isEmpty() || parent != null,
                () -> office().customer(new EntryChange(id(customer.text()), false, given),
                        Optional.ofNullable(parent), Optional.ofNullable(from)));
    }
}

package icequill.cli.entry;

import icequill.answer.EntryFlag;
import icequill.office.register.EntryChange;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Changes a customer of the book. */
@Command(name = "change", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfCustomer.class, description = "Changes what is given, and leaves the rest; an empty text takes a value out.")
public final class CustomerChangeCommand extends EntryCommand {

    @Parameters(paramLabel = "ID", description = "What the customer is called in the book: small letters, digits and hyphens.")
    private String id = "";

    @Option(names = "--parent", paramLabel = "ID", description = "The account that the customer belongs to, which is billed where the customer has no bill-to.")
    private @Nullable String parent;

    @Option(names = "--from", paramLabel = "D", description = "The day from which another is billed. Without it, who is billed now is corrected.")
    private @Nullable LocalDate from;

    public CustomerChangeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return stored(office().customer(new EntryChange(id, false, EntryFlags.given(spec(), EntryFlag.CUSTOMER)),
                Optional.ofNullable(parent), Optional.ofNullable(from)));
    }
}

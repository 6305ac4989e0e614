package icequill.cli.register;

import icequill.cli.terminal.EntryFlags;
import icequill.office.register.ContactChange;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Adds a contact. */
@Command(name = "add", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfContact.class, description = "Adds a contact to a customer or a site.", footerHeading = "%nExample:%n", footer = "  icequill contact add \"Ana Ruiz\" --customer fernhill-hotels --role owner --for bills,approvals --telephone 607-555-0142")
public final class ContactAddCommand extends ContactWriteCommand {

    public ContactAddCommand(Clock clock) {
        super(clock, ContactChange.Kind.ADD);
    }
}

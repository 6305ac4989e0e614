package icequill.cli.register;

import icequill.cli.terminal.EntryFlags;
import icequill.office.register.ContactChange;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Changes a contact. */
@Command(name = "change", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfContact.class, description = "Changes what is given of a contact, and leaves the rest; an empty text takes a value out.", footerHeading = "%nExample:%n", footer = "  icequill contact change \"Ana Ruiz\" --customer fernhill-hotels --telephone 607-555-0143")
public final class ContactChangeCommand extends ContactWriteCommand {

    public ContactChangeCommand(Clock clock) {
        super(clock, ContactChange.Kind.CHANGE);
    }
}

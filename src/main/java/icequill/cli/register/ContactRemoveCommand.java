package icequill.cli.register;

import icequill.office.register.ContactChange;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Takes a contact out. */
@Command(name = "remove", mixinStandardHelpOptions = true, description = "Takes a contact out of a customer or a site.", footerHeading = "%nExample:%n", footer = "  icequill contact remove \"Ana Ruiz\" --customer fernhill-hotels")
public final class ContactRemoveCommand extends ContactWriteCommand {

    public ContactRemoveCommand(Clock clock) {
        super(clock, ContactChange.Kind.REMOVE);
    }
}

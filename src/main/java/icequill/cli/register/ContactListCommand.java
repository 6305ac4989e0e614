package icequill.cli.register;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the book's contacts. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the contacts of the shop's book.", footerHeading = "%nExamples:%n", footer = {
        "  icequill contact list",
        "  icequill contact list fernhill"})
public final class ContactListCommand extends EntryCommand {

    @Parameters(paramLabel = "TEXT", arity = "0..1", description = "Only those that have this text in one of the columns.")
    private String text = "";

    public ContactListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return list(lists().contacts(text));
    }
}

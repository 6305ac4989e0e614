package icequill.cli.mail;

import icequill.answer.mail.MailSheet;
import icequill.office.mail.MailOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Has a mail tried again. */
@Command(name = "again", mixinStandardHelpOptions = true, description = "Has a mail tried again that was put off, refused or came back: it waits then, to whom the book says now.", footerHeading = "%nExample:%n", footer = "  icequill mail again INV-2026-00010.m1")
public final class MailAgainCommand extends MailStepCommand {

    public MailAgainCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<MailSheet> sheet(MailOffice office, String id) {
        return office.retry(id);
    }
}

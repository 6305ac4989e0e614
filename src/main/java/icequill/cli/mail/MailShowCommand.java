package icequill.cli.mail;

import icequill.answer.mail.MailSheet;
import icequill.office.mail.MailOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Shows a mail. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows a mail: to whom, what it says, what goes along, what happened. One that waits is shown as it would go out now.", footerHeading = "%nExample:%n", footer = "  icequill mail show INV-2026-00010.m1")
public final class MailShowCommand extends MailStepCommand {

    public MailShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<MailSheet> sheet(MailOffice office, String id) {
        return office.mail(id);
    }
}

package icequill.cli.mail;

import icequill.answer.mail.MailSheet;
import icequill.office.mail.MailOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Notes what a person found out about a mail. */
@Command(name = "found", mixinStandardHelpOptions = true, description = "Notes what you found out about a mail of which nobody knows, or which lay in the folder outbox: that it went out, or that it did not and waits again.", footerHeading = "%nExamples:%n", footer = {
        "  icequill mail found INV-2026-00010.m1 --went-out",
        "  icequill mail found INV-2026-00010.m1 --did-not"})
public final class MailFoundCommand extends MailStepCommand {

    @ArgGroup(multiplicity = "1")
    private Finding finding = new Finding();

    /** One of the two. */
    static final class Finding {
        @Option(names = "--went-out", required = true, description = "The customer has it, or your mail program sent it.")
        private boolean wentOut;

        @Option(names = "--did-not", required = true, description = "It did not go out; it waits to be sent again.")
        private boolean didNot;
    }

    public MailFoundCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<MailSheet> sheet(MailOffice office, String id) {
        return office.found(id, finding.wentOut && !finding.didNot);
    }
}

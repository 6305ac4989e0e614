package icequill.cli.mail;

import icequill.answer.mail.MailSheet;
import icequill.office.mail.MailOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Withdraws a mail. */
@Command(name = "withdraw", mixinStandardHelpOptions = true, description = "Sees to it that a mail does not go out.", footerHeading = "%nExample:%n", footer = "  icequill mail withdraw INV-2026-00010.m1 --reason \"went by post\"")
public final class MailWithdrawCommand extends MailStepCommand {

    @Option(names = "--reason", paramLabel = "TEXT", required = true, description = "Why; the book keeps it.")
    private String reason = "";

    public MailWithdrawCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<MailSheet> sheet(MailOffice office, String id) {
        return office.withdraw(id, reason);
    }
}

package icequill.cli.mail;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on mails. */
@Command(name = "mail", mixinStandardHelpOptions = true, subcommands = {MailAgainCommand.class, MailFoundCommand.class,
        MailListCommand.class, MailRecipientsCommand.class, MailReturnedCommand.class, MailSendCommand.class,
        MailShowCommand.class,
        MailWithdrawCommand.class,
        MailWriteCommand.class}, description = "Papers out by mail: written, sent, and what became of them. A mail is called as its paper is, with .m1, .m2 and so on behind.", footerHeading = "%nExamples:%n", footer = {
                "  icequill mail write INV-2026-00010           a mail about a paper, to look at",
                "  icequill mail send                           all that wait",
                "  icequill mail list                           what waits, came back, or nobody knows of"})
public final class MailCommand extends Noun {}

package icequill.cli.mail;

import icequill.cli.terminal.BookCommand;
import icequill.office.mail.MailOffice;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists mails. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists mails, those first that a person has to look after: refused, returned, or of which nobody knows whether they went out.", footerHeading = "%nExamples:%n", footer = {
        "  icequill mail list", "  icequill mail list --all"})
public final class MailListCommand extends BookCommand {

    @Option(names = "--all", description = "Those too that went out or were withdrawn.")
    private boolean all;

    public MailListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return list(MailOffice.of(folder(), clock()).mails(all));
    }
}

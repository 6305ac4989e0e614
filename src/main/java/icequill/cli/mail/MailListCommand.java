package icequill.cli.mail;

import icequill.cli.terminal.BookCommand;
import icequill.office.mail.MailOffice;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists mails. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists mails, those first that a person has to look after: refused, returned, or of which nobody knows whether they went out.", footerHeading = "%nExamples:%n", footer = {
        "  icequill mail list", "  icequill mail list --all --customer fernhill-hotels"})
public final class MailListCommand extends BookCommand {

    @Option(names = "--all", description = "Those too that went out or were withdrawn.")
    private boolean all;

    @Option(names = "--customer", paramLabel = "ID", description = "Only those to this customer.")
    private @Nullable String customer;

    public MailListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return list(MailOffice.of(folder(), clock()).mails(all, Optional.ofNullable(customer)));
    }
}

package icequill.cli.register;

import icequill.answer.WrittenPaper;
import icequill.cli.terminal.CustomerName;
import icequill.cli.terminal.MailOption;
import icequill.cli.terminal.PaperCommand;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes the statement of one account. */
@Command(name = "statement", mixinStandardHelpOptions = true, description = "Writes what a customer owes at the end of a day (--date) as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill customer statement fernhill-hotels",
        "  icequill customer statement mercado-del-mar --date 2026-08-31 --since 2026-01-01 --html"})
public final class CustomerStatementCommand extends PaperCommand {

    @Mixin
    private CustomerName customer = new CustomerName();

    @Option(names = "--since", paramLabel = "D", description = "List what happened from this day on. Default: 90 days before the date.")
    private @Nullable LocalDate since;

    @Mixin
    private MailOption mail = new MailOption();

    public CustomerStatementCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected boolean isMailed() {
        return mail.isSet();
    }

    @Override
    protected String named() {
        return customer.text();
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return office.accounts().statement(from, options, Optional.ofNullable(since));
    }
}

package icequill.cli.mail;

import icequill.answer.mail.MailList;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.PeriodOptions;
import icequill.life.mail.MailMatter.Occasion;
import icequill.office.mail.MailOffice;
import icequill.office.mail.MailPlanning;
import icequill.office.mail.MailScope;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes mails about papers. */
@Command(name = "write", mixinStandardHelpOptions = true, description = "Writes a mail about each of some papers: those that you name, or all of some days or of a customer's month that were not mailed yet. Nothing goes out before: icequill mail send.", footerHeading = "%nExamples:%n", footer = {
        "  icequill mail write INV-2026-00010",
        "  icequill mail write MQ-2026-00001 --lapses       that its prices soon hold no longer",
        "  icequill mail write --customer fernhill-hotels --month 2026-05 --dry-run",
        "  icequill mail write --customer fernhill-hotels --month 2026-05",
        "  icequill mail write --customer crumb-lane-bakery --from 2026-04-01     all since that day"})
public final class MailWriteCommand extends BookCommand {

    @Parameters(arity = "0..*", paramLabel = "NUMBER", description = "Numbers of papers.")
    private List<String> numbers = List.of();

    @Option(names = "--customer", paramLabel = "ID", description = "Only papers of this customer.")
    private @Nullable String customer;

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    @Option(names = "--lapses", description = "The mail says that the prices of the quote soon hold no longer.")
    private boolean lapses;

    @Option(names = "--again", description = "Papers too that were mailed before.")
    private boolean again;

    @Option(names = "--dry-run", description = "Write nothing, show which mails would be written, and why others would not.")
    private boolean dryRun;

    public MailWriteCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        ShopBook book = ShopBook.of(folder(), clock());
        MailScope scope = new MailScope(numbers, Optional.ofNullable(customer), period.period());
        Occasion occasion = lapses ? Occasion.LAPSES_SOON : Occasion.ISSUED;
        if (dryRun) {
            return list(new MailPlanning(book, scope, occasion, again).plan());
        }
        Validated<MailList> written = scope.papers(book)
                .then(found -> MailOffice.of(book).write(found, occasion, again));
        return printout().done(list(written), written.found().map(MailList::problems).orElse(List.of()));
    }
}

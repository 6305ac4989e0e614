package icequill.cli.offer;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.BookingOptions;
import icequill.cli.terminal.CustomerLanguage;
import icequill.cli.terminal.QuoteName;
import icequill.office.billing.IssueOffice;
import icequill.office.billing.IssueOptions;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Issues a quote out of the book. */
@Command(name = "issue", mixinStandardHelpOptions = true, description = "Issues the quote of a planned repair, or of maintenance: takes the next number, prints the PDF, and stores it in the shop's book for good.", footerHeading = "%nExamples:%n", footer = {
        "  icequill quote issue float-switch --dry-run", "  icequill quote issue float-switch --date 2026-05-14"})
public final class QuoteIssueCommand extends BookCommand {

    @Mixin
    private QuoteName form = new QuoteName();

    @Mixin
    private CustomerLanguage language = new CustomerLanguage();

    @Mixin
    private BookingOptions booking = new BookingOptions();

    public QuoteIssueCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = pricing(folderOf(Path.of(form.text())));
        IssueOptions options = new IssueOptions(booking.day(folder, clock()), language.language(),
                booking.booking(false));
        return booking.show(IssueOffice.of(folder, clock()).quote(form(form.text()), options).map(List::of),
                printout());
    }
}

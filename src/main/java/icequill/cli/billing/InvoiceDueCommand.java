package icequill.cli.billing;

import icequill.answer.paper.DueInstallments;
import icequill.answer.paper.IssuedPapers;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.BookingOptions;
import icequill.cli.terminal.CustomerLanguage;
import icequill.cli.terminal.ExitCode;
import icequill.cli.terminal.Printout;
import icequill.cli.terminal.Table;
import icequill.office.billing.InstallmentBilling;
import icequill.office.billing.IssueOptions;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists the installments that are due, and bills them. */
@Command(name = "due", mixinStandardHelpOptions = true, description = "Lists the installments of all agreements that are due and not billed; with --issue bills them, each by its invoice. A run that was stopped goes on where it was; a second one bills nothing twice.", footerHeading = "%nExamples:%n", footer = {
        "  icequill invoice due                        what is due today",
        "  icequill invoice due --until 2026-06-30     and what will be by then",
        "  icequill invoice due --issue --dry-run      what billing it would give; without --dry-run it is done"})
public final class InvoiceDueCommand extends BookCommand {

    @Option(names = "--until", paramLabel = "DAY", description = "Due up to this day; today if left out.")
    private @Nullable LocalDate until;

    @Option(names = "--issue", description = "Bill them.")
    private boolean issue;

    @Mixin
    private CustomerLanguage language = new CustomerLanguage();

    @Mixin
    private BookingOptions booking = new BookingOptions();

    public InvoiceDueCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = pricing(folder());
        LocalDate day = until == null ? ShopDay.today(folder, clock()) : until;
        InstallmentBilling office = InstallmentBilling.of(folder, clock());
        Validated<DueInstallments> due = office.due(day);
        if (!issue) {
            return show(due, this::tell);
        }
        IssueOptions options = new IssueOptions(booking.day(folder, clock()), language.language(),
                booking.booking(false));
        return due.found().map(found -> bill(office, found, options))
                .orElseGet(() -> printout().problems(due.problems()));
    }

    private void tell(DueInstallments due) {
        print(due.rows().isEmpty() ? "None." : Table.of(due.head(), due.rows(), due.head().size() - 1));
        tellRest(due);
    }

    private void tellRest(DueInstallments due) {
        due.missed().stream().map(DueInstallments.One::missing).forEach(printout().err()::println);
        due.problems().stream().map(Problem::text).forEach(printout().err()::println);
    }

    private int bill(InstallmentBilling office, DueInstallments due, IssueOptions options) {
        Printout printout = printout();
        IssuedPapers issued = office.each(due.installments(), options, paper -> {
            paper.found().filter(made -> !printout.json()).ifPresent(made -> booking.print(made, printout));
            return true;
        });
        if (printout.json()) {
            printout.answer(issued);
        } else {
            issued.problems().stream().map(Problem::text).forEach(printout.err()::println);
            tellRest(due);
            print(issued.papers().size() + " of " + due.installments().size()
                    + (booking.isTrial() ? " installments would be billed." : " installments billed."));
        }
        return issued.problems().isEmpty() && due.problems().isEmpty()
                ? ExitCode.OK.status()
                : ExitCode.PROBLEMS.status();
    }
}

package icequill.cli.billing;

import icequill.answer.paper.IssuedPapers;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.BookingOptions;
import icequill.cli.terminal.CustomerLanguage;
import icequill.cli.terminal.ExitCode;
import icequill.cli.terminal.Printout;
import icequill.cli.terminal.VisitName;
import icequill.office.billing.IssueOffice;
import icequill.office.billing.IssueOptions;
import icequill.office.billing.RecordOffice;
import icequill.office.billing.VisitBilling;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.shop.FormName;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Issues invoices out of the book. */
@Command(name = "issue", mixinStandardHelpOptions = true, description = "Bills visits, or an installment of an agreement: takes the next number, prints the PDF, and stores it in the shop's book for good.", footerHeading = "%nExamples:%n", footer = {
        "  icequill invoice issue late-call",
        "  icequill invoice issue valve-repair-taproom ten-minute-brushing   an invoice for each",
        "  icequill invoice issue june-visit july-visit --together           one for both, of one customer",
        "  icequill invoice issue --all --dry-run                               what billing every visit that is done would give",
        "  icequill invoice issue --all                                         does it, each invoice dated today",
        "  icequill invoice issue crumb-lane-bakery --installment 1"})
public final class InvoiceIssueCommand extends BookCommand {

    @ArgGroup(multiplicity = "1")
    private Which which = new Which();

    @Option(names = "--installment", paramLabel = "N", description = "NAME is an agreement: bill its installment N, counted from 1. Which is next: icequill agreement next.")
    private @Nullable Integer installment;

    @Option(names = "--out-of-order", description = "With --installment: bill it though an earlier one is not billed.")
    private boolean outOfOrder;

    @Option(names = "--together", description = "Bill the visits, all of one customer, by one invoice: all of them or none.")
    private boolean together;

    @Mixin
    private CustomerLanguage language = new CustomerLanguage();

    @Mixin
    private BookingOptions booking = new BookingOptions();

    /** What is to be billed. */
    static final class Which {

        @Parameters(paramLabel = "NAME", arity = "1..*", completionCandidates = VisitName.Known.class, description = "Visits, each to be billed by an invoice: ids of the book, or files, which are taken in first. With --installment an agreement.")
        private List<String> names = new ArrayList<>();

        @Option(names = "--all", description = "Bill every visit that is done and not billed yet.")
        private boolean all;
    }

    public InvoiceIssueCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        fitting();
        Path folder = pricing(which.all ? folder() : folderOf(Path.of(which.names.getFirst())));
        IssueOptions options = new IssueOptions(booking.day(folder, clock()), language.language(),
                booking.booking(outOfOrder));
        List<FormName> names = which.names.stream().map(this::form).toList();
        if (installment != null) {
            return booking.show(IssueOffice.of(folder, clock()).installment(names.getFirst(), installment, options)
                    .map(List::of), printout());
        }
        VisitBilling office = VisitBilling.of(folder, clock());
        if (together) {
            return booking.show(office.together(names, options).map(List::of), printout());
        }
        if (!which.all) {
            return each(office, names, options);
        }
        Problems problems = new Problems();
        return problems.take(RecordOffice.of(folder, clock()).unbilled())
                .map(visits -> each(office, visits.stream().map(this::form).toList(), options))
                .orElseGet(() -> printout().problems(problems.list()));
    }

    private void fitting() {
        if (installment == null ? outOfOrder : together || which.names.size() != 1) {
            throw new ParameterException(spec().commandLine(), installment == null
                    ? "--out-of-order goes with --installment"
                    : "--installment goes with one agreement, and not with --all or --together");
        }
        if (together && which.names.size() < 2) {
            throw new ParameterException(spec().commandLine(), "--together goes with two visits or more, by name");
        }
    }

    private int each(VisitBilling office, List<FormName> visits, IssueOptions options) {
        Printout printout = printout();
        IssuedPapers issued = office.each(visits, options, paper -> {
            paper.found().filter(made -> !printout.json()).ifPresent(made -> booking.print(made, printout));
            return true;
        });
        if (printout.json()) {
            printout.answer(issued);
        } else {
            issued.problems().stream().map(Problem::text).forEach(printout.err()::println);
            if (which.all || visits.size() > 1) {
                print(issued.papers().size() + " of " + visits.size()
                        + (booking.isTrial() ? " visits would be billed." : " visits billed."));
            }
        }
        return issued.problems().isEmpty() ? ExitCode.OK.status() : ExitCode.PROBLEMS.status();
    }
}

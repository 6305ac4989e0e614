package icequill.cli.book;

import icequill.answer.BookedPaper;
import icequill.answer.NextPayment;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.BookingOptions;
import icequill.cli.terminal.ExitCode;
import icequill.cli.terminal.LanguageTag;
import icequill.cli.terminal.Printout;
import icequill.office.billing.IssueOffice;
import icequill.office.billing.IssueOptions;
import icequill.party.Language;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Issues papers out of the book. */
@Command(name = "issue", mixinStandardHelpOptions = true, description = "Issues invoices and quotes: takes the next number, prints the PDF, and stores it in the shop's book for good.", footerHeading = "%nExamples:%n", footer = {
        "  icequill issue late-call                         the invoice of a recorded visit",
        "  icequill issue late-call valve-repair --together   one invoice for both",
        "  icequill issue --all --dry-run                   what billing every visit that is not billed yet would give",
        "  icequill issue --all                             does it, each invoice dated today",
        "  icequill issue --quote float-switch --date 2026-05-14",
        "  icequill issue --agreement crumb-lane-bakery                which payment is next",
        "  icequill issue --agreement crumb-lane-bakery --payment 2"})
public final class IssueCommand extends BookCommand {

    @ArgGroup(multiplicity = "1")
    private What what = new What();

    @Option(names = "--payment", paramLabel = "N", description = "With --agreement: which payment, counted from 1. Left out, it says which is next.")
    private @Nullable Integer payment;

    @Option(names = "--out-of-order", description = "With --payment: bill it though an earlier one is not billed.")
    private boolean outOfOrder;

    @Option(names = "--together", description = "Bill the visits, all of one customer, by one invoice: all of them or none.")
    private boolean together;
    @Option(names = "--date", paramLabel = "D", description = "The date of the paper, as 2026-05-14. Default: today.")
    private @Nullable LocalDate date;

    @Option(names = "--lang", paramLabel = "LANG", converter = LanguageTag.class, description = "Language, en or es. Default: the customer's, else the shop's.")
    private @Nullable Language language;

    @Mixin
    private BookingOptions booking = new BookingOptions();

    /** What is to be issued. */
    static final class What {

        @Parameters(paramLabel = "VISIT", arity = "1..*", description = "Recorded visits, each to be billed by an invoice.")
        private List<String> visits = new ArrayList<>();

        @Option(names = "--all", description = "Bill every recorded visit that is not billed yet.")
        private boolean all;

        @Option(names = "--quote", paramLabel = "FORM", description = "Quote a planned repair, or maintenance: by its id in the book, or a file.")
        private @Nullable String quote;

        @Option(names = "--agreement", paramLabel = "FORM", description = "Bill a payment of an agreement: by its id or number in the book, or a file.")
        private @Nullable String agreement;
    }

    public IssueCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        if (what.quote != null) {
            Path folder = pricing(folderOf(Path.of(what.quote)));
            return booking.show(IssueOffice.of(folder, clock()).quote(form(what.quote), wish(folder)).map(List::of),
                    printout());
        }
        String agreement = what.agreement;
        if (agreement != null) {
            Path folder = pricing(folderOf(Path.of(agreement)));
            IssueOffice office = IssueOffice.of(folder, clock());
            return payment == null
                    ? show(office.nextPayment(form(agreement), wish(folder).date()),
                            next -> tell(next, agreement))
                    : booking.show(office.payment(form(agreement), payment, wish(folder))
                            .map(List::of), printout());
        }
        IssueOffice office = IssueOffice.of(pricing(folder()), clock());
        IssueOptions wish = wish(folder());
        if (together) {
            return booking.show(office.together(what.visits, wish).map(List::of), printout());
        }
        return what.all
                ? office.unbilled() instanceof Validated.Invalid<List<String>> invalid
                        ? printout().problems(invalid.problems())
                        : each(office, office.unbilled().orElseThrow(), wish)
                : each(office, what.visits, wish);
    }

    private IssueOptions wish(Path folder) {
        return new IssueOptions(date == null ? ShopDay.today(folder, clock()) : date,
                Optional.ofNullable(language), booking.booking(outOfOrder));
    }

    private void tell(NextPayment next, String agreement) {
        print(next.payment().map(payment -> "Next of " + next.agreement() + ": " + payment.text()
                + "\nTo bill it: icequill issue --agreement " + agreement + " --payment " + payment.number())
                .orElse("All payments of " + next.agreement() + " are billed."));
    }

    /** Each is a transaction of its own: what cannot be billed does not hold up the rest. */
    private int each(IssueOffice office, List<String> visits, IssueOptions wish) {
        Problems problems = new Problems();
        List<BookedPaper> issued = new ArrayList<>();
        Printout printout = printout();
        for (String visit : visits) {
            problems.take(office.issue(visit, wish)).ifPresent(paper -> {
                issued.add(paper);
                if (!printout.json()) {
                    booking.print(paper, printout);
                }
            });
        }
        if (printout.json()) {
            printout.answer(booking.answer(issued, problems.list()));
        } else {
            problems.list().stream().map(Problem::text).forEach(printout.err()::println);
            if (what.all || visits.size() > 1) {
                print(issued.size() + " of " + visits.size()
                        + (booking.isTrial() ? " visits would be billed." : " visits billed."));
            }
        }
        return problems.isEmpty() ? ExitCode.OK.status() : ExitCode.PROBLEMS.status();
    }
}

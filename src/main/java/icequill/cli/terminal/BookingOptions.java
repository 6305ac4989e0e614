package icequill.cli.terminal;

import icequill.answer.BookedPaper;
import icequill.answer.paper.IssuedPapers;
import icequill.office.billing.Booking;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How papers go into the book, for all commands that issue some. */
public final class BookingOptions {

    @Mixin
    private DayOption day = new DayOption();

    @Option(names = "--backdate", paramLabel = "REASON", description = "Why the paper bears an earlier day than the one before it in its series. The book keeps it.")
    private @Nullable String backdate;

    @Option(names = "--dry-run", description = "Shows what would be issued, with all problems, and issues nothing.")
    private boolean dryRun;

    public Booking booking(boolean outOfOrder) {
        return new Booking(Optional.ofNullable(backdate), outOfOrder, dryRun);
    }

    /** The date of the papers. */
    public LocalDate day(Path folder, Clock clock) {
        return day.in(folder, clock);
    }

    public boolean isTrial() {
        return dryRun;
    }

    /** Shows papers that were issued, or would be. */
    public int show(Validated<List<BookedPaper>> papers, Printout printout) {
        return printout.answer(papers.map(all -> answer(all, List.of())), answer -> {
            answer.papers().forEach(paper -> print(paper, printout));
            if (dryRun) {
                printout.out().println("Nothing was issued.");
            }
        });
    }

    /**
     * What came of issuing.
     *
     * @param problems of those that could not be issued
     */
    public IssuedPapers answer(List<BookedPaper> papers, List<Problem> problems) {
        return new IssuedPapers(papers, dryRun, problems);
    }

    public void print(BookedPaper paper, Printout printout) {
        if (dryRun) {
            printout.out()
                    .println("Would issue " + paper.description() + ", dated " + paper.date() + ": " + paper.where());
        } else {
            BookCommand.print(paper, printout);
        }
    }
}

package icequill.cli.terminal;

import icequill.answer.BookedPaper;
import icequill.answer.JsonText;
import icequill.office.billing.Booking;
import icequill.problem.Validated;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How papers go into the book, for all commands that issue some. */
public final class BookingOptions {

    @Option(names = "--backdate", paramLabel = "REASON", description = "Why the paper bears an earlier day than the one before it in its series. The book keeps it.")
    private @Nullable String backdate;

    @Option(names = "--dry-run", description = "Shows what would be issued, with all problems, and issues nothing.")
    private boolean dryRun;

    public Booking booking(boolean outOfOrder) {
        return new Booking(Optional.ofNullable(backdate), outOfOrder, dryRun);
    }

    public boolean isTrial() {
        return dryRun;
    }

    /** Shows papers that were issued, or would be. */
    public int show(Validated<List<BookedPaper>> papers, Printout printout) {
        return dryRun
                ? printout.show(papers, all -> {
                    if (printout.json()) {
                        printout.out().println(JsonText.of(json(all)));
                    } else {
                        all.forEach(paper -> print(paper, printout));
                        printout.out().println("Nothing was issued.");
                    }
                })
                : BookCommand.show(papers, printout);
    }

    public Map<String, ?> json(List<BookedPaper> papers) {
        return dryRun
                ? Map.of("wouldIssue", papers.stream().map(BookingOptions::unnumbered).toList())
                : BookCommand.json(papers);
    }

    public void print(BookedPaper paper, Printout printout) {
        if (dryRun) {
            printout.out()
                    .println("Would issue " + paper.description() + ", dated " + paper.date() + ": " + paper.where());
        } else {
            BookCommand.print(paper, printout);
        }
    }

    /** Its number and file are those of whatever is issued next. */
    private static Map<String, Object> unnumbered(BookedPaper paper) {
        Map<String, Object> view = new LinkedHashMap<>(paper.json());
        view.remove("number");
        view.remove("file");
        return view;
    }
}

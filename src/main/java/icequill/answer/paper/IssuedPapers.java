package icequill.answer.paper;

import icequill.answer.BookedPaper;
import icequill.files.answer.Sheet;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.List;

/**
 * Papers that were issued, or would be.
 *
 * @param dryRun whether nothing was issued, so that numbers and files are those of whatever is issued next
 * @param problems of what could not be issued
 */
public record IssuedPapers(List<BookedPaper> papers, boolean dryRun, List<Problem> problems) implements Sheet {

    public IssuedPapers {
        papers = List.copyOf(papers);
        problems = List.copyOf(problems);
    }

    /** Those of a run, or why there was none. */
    public static IssuedPapers of(Validated<IssuedPapers> run, boolean dryRun) {
        return run.found().orElseGet(() -> new IssuedPapers(List.of(), dryRun, run.problems()));
    }

    /** What issuing did. */
    public sealed interface Data {}

    /** Papers that stand in the book now. */
    public record Issued(List<BookedPaper> papers, List<Problem> problems) implements Data {}

    /** Papers that would stand there. */
    public record Tried(List<UnnumberedPaper> wouldIssue, List<Problem> problems) implements Data {}

    @Override
    public Data data() {
        return dryRun
                ? new Tried(papers.stream().map(UnnumberedPaper::of).toList(), problems)
                : new Issued(papers, problems);
    }
}

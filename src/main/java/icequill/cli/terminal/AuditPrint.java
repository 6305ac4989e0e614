package icequill.cli.terminal;

import icequill.answer.AuditSheet;
import icequill.problem.Problem;
import icequill.problem.Validated;

/** How a book was found, as text or JSON. */
public final class AuditPrint {

    private AuditPrint() {
    }

    /**
     * Prints it and gives the exit status.
     *
     * @param done what was done besides looking, as a sentence
     */
    public static int report(Validated<AuditSheet> found, String done, Printout printout) {
        if (found instanceof Validated.Invalid<AuditSheet> invalid) {
            return printout.problems(invalid.problems());
        }
        AuditSheet sheet = found.orElseThrow();
        if (printout.json()) {
            printout.answer(sheet);
        } else {
            if (!sheet.series().isEmpty()) {
                printout.out().println(Table.of(AuditSheet.HEAD, sheet.rows(), 1));
            }
            sheet.filesElsewhere().forEach(series -> printout.out().println(
                    "Not looked at, since they lie in their office's own folder: the files of " + series + " papers"));
            sheet.findings().stream().map(Problem::text).forEach(printout.err()::println);
            printout.out().println(done + (sheet.findings().isEmpty()
                    ? "All is well: "
                    : sheet.findings().size() + " findings in ") + sheet.papers() + " papers, "
                    + sheet.changes() + " changes in the trail.");
        }
        return sheet.findings().isEmpty() ? ExitCode.OK.status() : ExitCode.PROBLEMS.status();
    }
}

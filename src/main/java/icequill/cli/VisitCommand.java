package icequill.cli;

import icequill.office.IssueOffice;
import icequill.office.RecordedVisit;
import icequill.problem.Checked;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Records a visit in the book. */
@Command(name = "visit", mixinStandardHelpOptions = true, description = "Records a finished visit in the shop's book, priced, to be billed by: icequill issue. Recorded again before it is billed, it takes the place of the first.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit visits/late-call.yaml", "  icequill visit visits/late-call.yaml --json"})
final class VisitCommand extends BookCommand {

    @Parameters(paramLabel = "FILE", description = "The visit's file. Its name is what the visit is called in the book.")
    private Path file = Path.of("");

    VisitCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Checked<RecordedVisit> recorded = IssueOffice.of(folderOf(file), clock()).record(file(file));
        return show(recorded, visit -> Map.of("visit", visit.json()), visit -> {
            print("Recorded " + visit.summary());
            visit.notices().forEach(notice -> printout().err().println("Note: " + notice.text()));
            print("Next: icequill issue " + visit.id());
        });
    }
}

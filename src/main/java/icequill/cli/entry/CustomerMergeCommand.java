package icequill.cli.entry;

import icequill.answer.MergeResult;
import icequill.office.register.MergeOffice;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes one customer of two. */
@Command(name = "merge", mixinStandardHelpOptions = true, description = "Makes one customer of two that are one: sites, and accounts below, go to the survivor. Issued papers stay as they are, and are found under the survivor. Whom to call, notes and the like are added to what the survivor has; what bears on prices or taxes is told, and left as he has it. This cannot be undone.", footerHeading = "%nExamples:%n", footer = {
        "  icequill customer merge mill-lane-2 --into mill-lane --dry-run",
        "  icequill customer merge mill-lane-2 --into mill-lane"})
public final class CustomerMergeCommand extends EntryCommand {

    @Parameters(paramLabel = "FROM", description = "The one that is no more, by id.")
    private String from = "";

    @Option(names = "--into", required = true, paramLabel = "ID", description = "The survivor, by id.")
    private String into = "";

    @Option(names = "--dry-run", description = "Says what would go where, and stores nothing.")
    private boolean dryRun;

    public CustomerMergeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(MergeOffice.of(folder(), clock()).customers(from, into, dryRun), MergeResult::json,
                merged -> merged.lines().forEach(this::print));
    }
}

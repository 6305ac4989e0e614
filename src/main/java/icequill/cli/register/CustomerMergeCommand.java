package icequill.cli.register;

import icequill.answer.MergeResult;
import icequill.office.register.MergeOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Makes one customer of two. */
@Command(name = "merge", mixinStandardHelpOptions = true, description = "Makes one customer of two that are one: sites, and accounts below, go to the survivor. Issued papers stay as they are, and are found under the survivor. Whom to call, notes and the like are added to what the survivor has; what bears on prices or taxes is told, and left as he has it. This cannot be undone.", footerHeading = "%nExamples:%n", footer = {
        "  icequill customer merge mill-lane-2 --into mill-lane --dry-run",
        "  icequill customer merge mill-lane-2 --into mill-lane"})
public final class CustomerMergeCommand extends MergeCommand {

    public CustomerMergeCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<MergeResult> merged(MergeOffice office, String gone, String survivor, boolean isDryRun) {
        return office.customers(gone, survivor, isDryRun);
    }
}

package icequill.cli.register;

import icequill.answer.MergeResult;
import icequill.office.register.MergeOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Makes one site of two. */
@Command(name = "merge", mixinStandardHelpOptions = true, description = "Makes one site of two that are one: machines and visits go to the survivor, which has to be of the same customer. Issued papers stay as they are, and are found under the survivor. Whom to call, notes and the like are added to what the survivor has; what bears on prices or taxes is told, and left as it is there. This cannot be undone.", footerHeading = "%nExamples:%n", footer = {
        "  icequill site merge mill-corner --into hotel-fernhill --dry-run",
        "  icequill site merge mill-corner --into hotel-fernhill"})
public final class SiteMergeCommand extends MergeCommand {

    public SiteMergeCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<MergeResult> merged(MergeOffice office, String gone, String survivor, boolean isDryRun) {
        return office.sites(gone, survivor, isDryRun);
    }
}

package icequill.cli.entry;

import icequill.answer.MergeResult;
import icequill.office.register.MergeOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the commands share that make one of two. */
abstract class MergeCommand extends EntryCommand {

    @Parameters(paramLabel = "FROM", description = "The one that is no more, by id.")
    private String from = "";

    @Option(names = "--into", required = true, paramLabel = "ID", description = "The survivor, by id.")
    private String into = "";

    @Option(names = "--dry-run", description = "Says what would go where, and stores nothing.")
    private boolean dryRun;

    MergeCommand(Clock clock) {
        super(clock);
    }

    /** @param isDryRun whether to look only */
    abstract Validated<MergeResult> merged(MergeOffice office, String gone, String survivor, boolean isDryRun);

    @Override
    public final Integer call() {
        return show(merged(MergeOffice.of(folder(), clock()), from, into, dryRun),
                merged -> merged.lines().forEach(this::print));
    }
}

package icequill.cli.register;

import icequill.answer.MergeResult;
import icequill.cli.terminal.Confirmation;
import icequill.office.register.MergeOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.Mixin;
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

    @Mixin
    private Confirmation sure = new Confirmation();

    MergeCommand(Clock clock) {
        super(clock);
    }

    /** @param isDryRun whether to look only */
    abstract Validated<MergeResult> merged(MergeOffice office, String gone, String survivor, boolean isDryRun);

    @Override
    public final Integer call() {
        MergeOffice office = MergeOffice.of(folder(), clock());
        String gone = id(from);
        String survivor = id(into);
        return show(dryRun || sure.isGiven()
                ? merged(office, gone, survivor, dryRun)
                : merged(office, gone, survivor, true)
                        .then(would -> sure.of(would, String.join("\n", would.lines()) + "\nThis cannot be undone.",
                                gone))
                        .then(meant -> merged(office, gone, survivor, false)),
                merged -> merged.lines().forEach(this::print));
    }
}

package icequill.cli.visit;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on jobs. */
@Command(name = "job", mixinStandardHelpOptions = true, subcommands = {JobDepositCommand.class,
        JobDoneCommand.class, JobListCommand.class, JobOrderCommand.class, JobProgressCommand.class,
        JobReadyCommand.class, JobRecommendedCommand.class, JobReleaseCommand.class, JobShowCommand.class,
        JobWithdrawCommand.class}, description = "Sees accepted repairs through: parts, the visit, and whether it is billed. A job is called by the number of its quote.", footerHeading = "%nExamples:%n", footer = {
                "  icequill job list                                       what waits",
                "  icequill job list --all"})
public final class JobCommand extends Noun {}

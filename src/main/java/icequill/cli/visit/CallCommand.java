package icequill.cli.visit;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on calls. */
@Command(name = "call", mixinStandardHelpOptions = true, subcommands = {CallTakeCommand.class, CallChangeCommand.class,
        CallPlanCommand.class, CallApproveCommand.class, CallCloseCommand.class, CallWithdrawCommand.class,
        CallShowCommand.class,
        CallListCommand.class,
        CallReviewCommand.class}, description = "Takes calls of customers, plans and closes them, and holds what they called for against what was to be expected.", footerHeading = "%nExamples:%n", footer = {
                "  icequill call take hotel-fernhill --by Bram --symptom \"No ice.\"",
                "  icequill call list --month 2026-05", "  icequill call review"})
public final class CallCommand extends Noun {}

package icequill.cli.register;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on the book's machines. */
@Command(name = "machine", mixinStandardHelpOptions = true, subcommands = {MachineAddCommand.class,
        MachineChangeCommand.class, MachineListCommand.class,
        MachineShowCommand.class,
        MachineHistoryCommand.class}, description = "Keeps the machines of the shop's book.", footerHeading = "%nExamples:%n", footer = {
                "  icequill machine add mill-lane back-bar --model \"Cuber 500\" --where \"back bar\" --make batch --form head --cooling air --harvest-rate 500 --connection hard-wired",
                "  icequill machine change mill-lane back-bar --condition \"plating worn\"",
                "  icequill machine list QD-500",
                "  icequill machine show mill-lane back-bar",
                "  icequill machine history mill-lane back-bar --from 2026-01-01"})
public final class MachineCommand extends Noun {}

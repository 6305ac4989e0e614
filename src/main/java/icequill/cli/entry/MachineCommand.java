package icequill.cli.entry;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

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
public final class MachineCommand implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}

package icequill.cli.register;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the book's machines. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the machines of the shop's book.", footerHeading = "%nExamples:%n", footer = {
        "  icequill machine list",
        "  icequill machine list QD-500"})
public final class MachineListCommand extends EntryCommand {

    @Parameters(paramLabel = "TEXT", arity = "0..1", description = "Only those that have this text in one of the columns.")
    private String text = "";

    public MachineListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return list(lists().machines(text));
    }
}

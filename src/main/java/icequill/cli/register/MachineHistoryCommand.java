package icequill.cli.register;

import icequill.cli.terminal.SiteName;
import java.time.Clock;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells what was done at a machine. */
@Command(name = "history", mixinStandardHelpOptions = true, description = "Tells what was done at one machine, the oldest first, as: icequill site history", footerHeading = "%nExamples:%n", footer = {
        "  icequill machine history hotel-fernhill lobby-bar"})
public final class MachineHistoryCommand extends HistoryCommand {

    @Mixin
    private SiteName site = new SiteName();

    @Parameters(index = "1", paramLabel = "ID", description = "What the machine is called within its site.")
    private String id = "";

    public MachineHistoryCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return history(id(site.text()), Optional.of(id));
    }
}

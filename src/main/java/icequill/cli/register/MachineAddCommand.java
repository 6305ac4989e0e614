package icequill.cli.register;

import icequill.answer.EntryFlag;
import icequill.cli.terminal.EntryFlags;
import icequill.cli.terminal.SiteName;
import icequill.office.register.EntryChange;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Adds a machine to the book. */
@Command(name = "add", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfMachine.class, description = "Adds a machine to the shop's book.", footerHeading = "%nExample:%n", footer = "  icequill machine add hotel-fernhill back-bar --model \"Cuber 500\" --where \"back bar\" --make batch --form head --cooling air --harvest-rate 500 --connection hard-wired")
public final class MachineAddCommand extends EntryCommand {

    @Mixin
    private SiteName site = new SiteName();

    @Parameters(index = "1", paramLabel = "ID", description = "What the machine is called within its site.")
    private String id = "";

    public MachineAddCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return stored(office().machine(id(site.text()),
                new EntryChange(id, true, EntryFlags.given(spec(), EntryFlag.MACHINE))));
    }
}

package icequill.cli.entry;

import icequill.answer.EntryFlag;
import icequill.office.register.EntryChange;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Adds a machine to the book. */
@Command(name = "add", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfMachine.class, description = "Adds a machine to the shop's book.")
public final class MachineAddCommand extends EntryCommand {

    @Parameters(index = "0", paramLabel = "SITE", description = "The site, by id.")
    private String site = "";

    @Parameters(index = "1", paramLabel = "ID", description = "What the machine is called within its site.")
    private String id = "";

    public MachineAddCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return stored(office().machine(site, new EntryChange(id, true, EntryFlags.given(spec(), EntryFlag.MACHINE))));
    }
}

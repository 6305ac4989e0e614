package icequill.cli.entry;

import icequill.answer.EntryFlag;
import icequill.office.register.EntryChange;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Changes a machine of the book. */
@Command(name = "change", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfMachine.class, description = "Changes what is given, and leaves the rest; an empty text takes a value out.")
public final class MachineChangeCommand extends EntryCommand {

    @Parameters(index = "0", paramLabel = "SITE", description = "The site, by id.")
    private String site = "";

    @Parameters(index = "1", paramLabel = "ID", description = "What the machine is called within its site.")
    private String id = "";

    public MachineChangeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return stored(office().machine(site, new EntryChange(id, false, EntryFlags.given(spec(), EntryFlag.MACHINE))));
    }
}

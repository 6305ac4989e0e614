package icequill.cli.register;

import icequill.answer.EntryFlag;
import icequill.cli.terminal.EntryFlags;
import icequill.cli.terminal.SiteName;
import icequill.office.register.EntryChange;
import java.time.Clock;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Changes a machine of the book. */
@Command(name = "change", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfMachine.class, description = "Changes what is given, and leaves the rest; an empty text takes a value out.", footerHeading = "%nExample:%n", footer = "  icequill machine change hotel-fernhill back-bar --condition \"plating worn\"")
public final class MachineChangeCommand extends EntryCommand {

    @Mixin
    private SiteName site = new SiteName();

    @Parameters(index = "1", paramLabel = "ID", description = "What the machine is called within its site.")
    private String id = "";

    public MachineChangeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Map<String, String> given = EntryFlags.given(spec(), EntryFlag.MACHINE);
        return changed(!given.isEmpty(),
                () -> office().machine(id(site.text()), new EntryChange(id, false, given)));
    }
}

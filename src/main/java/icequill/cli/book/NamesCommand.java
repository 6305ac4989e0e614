package icequill.cli.book;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ExitCode;
import icequill.office.register.RegisterLists;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists names for the completion of shells, which asks for them; without a shop there are none. */
@Command(name = "names", hidden = true, mixinStandardHelpOptions = true, description = "Lists names of the book, one a line, for the completion of shells.", footerHeading = "%nExample:%n", footer = "  icequill names site")
public final class NamesCommand extends BookCommand {

    @Parameters(paramLabel = "KIND", description = "customer, site, call, visit, agreement or quoted.")
    private String kind = "";

    public NamesCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        RegisterLists.of(folder(), clock()).names(kind).found().orElse(List.of()).forEach(this::print);
        return ExitCode.OK.status();
    }
}

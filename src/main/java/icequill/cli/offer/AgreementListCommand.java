package icequill.cli.offer;

import icequill.cli.terminal.BookCommand;
import icequill.office.register.RegisterLists;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the book's agreements. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the agreements of the shop's book.", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement list", "  icequill agreement list hotel"})
public final class AgreementListCommand extends BookCommand {

    @Parameters(paramLabel = "TEXT", arity = "0..1", description = "Only those that have this text in one of the columns.")
    private String text = "";

    public AgreementListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return list(RegisterLists.of(folder(), clock()).agreements(text));
    }
}

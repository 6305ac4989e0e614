package icequill.cli.visit;

import icequill.cli.terminal.BookCommand;
import icequill.office.billing.RecordOffice;
import icequill.shop.FormName;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Takes a visit into the book. */
@Command(name = "add", mixinStandardHelpOptions = true, description = "Takes a visit, done or planned, from its form into the shop's book, priced, to be billed by: icequill invoice issue. Until it is billed, the same again takes the place of the first.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit add today.yaml", "  icequill visit add today.yaml --json"})
public final class VisitAddCommand extends BookCommand {

    @Parameters(paramLabel = "FILE", description = "The visit's form. What the visit is called in the book it says itself, or its file's name does.")
    private Path file = Path.of("");

    public VisitAddCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(RecordOffice.of(pricing(folderOf(file)), clock()).record(FormName.file(file(file))),
                visit -> RecordedPrint.print(visit, printout()));
    }
}

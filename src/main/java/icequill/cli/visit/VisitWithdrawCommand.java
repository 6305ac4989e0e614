package icequill.cli.visit;

import icequill.answer.WithdrawnVisit;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.VisitName;
import icequill.office.billing.RecordOffice;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes a visit back. */
@Command(name = "withdraw", mixinStandardHelpOptions = true, description = "Takes back a visit that is not billed, and is not to be. The book keeps it, and why.", footerHeading = "%nExample:%n", footer = "  icequill visit withdraw goodwill-clinic --reason \"The same visit as another.\"")
public final class VisitWithdrawCommand extends BookCommand {

    @Mixin
    private VisitName visit = new VisitName();

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why; the book keeps it.")
    private String reason = "";

    public VisitWithdrawCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(RecordOffice.of(folder(), clock()).withdraw(id(visit.text()), reason),
                this::tell);
    }

    private void tell(WithdrawnVisit withdrawn) {
        print("Withdrawn: " + withdrawn.visit() + " at " + withdrawn.site() + " on " + withdrawn.day() + ": "
                + withdrawn.reason());
    }
}

package icequill.cli;

import icequill.office.BookKeeping;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Audits the book. */
@Command(name = "audit", mixinStandardHelpOptions = true, description = "Goes through the whole book: numbers without gaps, the chain of seals, sums, and every file. Says exactly what is wrong.", footerHeading = "%nExamples:%n", footer = {
        "  icequill audit", "  icequill audit --json"})
final class AuditCommand extends BookCommand {

    AuditCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return AuditPrint.report(BookKeeping.of(folder(), clock()).audit(progress("looked at")), "", printout());
    }
}

package icequill.cli.book;

import icequill.answer.AuditSheet;
import icequill.cli.terminal.AuditPrint;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ExitCode;
import icequill.office.care.BookMaintenance;
import icequill.problem.Validated;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Audits the book. */
@Command(name = "audit", mixinStandardHelpOptions = true, subcommands = AuditTrailCommand.class, description = "Goes through the whole book: numbers without gaps, the chain of seals, sums, and every file. Says exactly what is wrong. Who changed what: icequill audit trail.", footerHeading = "%nExamples:%n", footer = {
        "  icequill audit", "  icequill audit --json",
        "  icequill audit --seal > seal-2026-05.txt          one line to print, mail, keep elsewhere",
        "  icequill audit --against seal-2026-05.txt book-2026-05-14.zip INV-2026-00012.pdf"})
public final class AuditCommand extends BookCommand {

    public AuditCommand(Clock clock) {
        super(clock);
    }

    @Option(names = "--against", paramLabel = "FILE", arity = "1..*", description = "Hold the book against what was kept elsewhere: backups, PDFs that went out, files with a line of --seal, or the line itself.")
    private List<String> against = new ArrayList<>();

    @Option(names = "--seal", description = "If all is well, print only one line that seals all papers up to now.")
    private boolean seal;

    @Override
    public Integer call() {
        Validated<AuditSheet> found = BookMaintenance.of(folder(), clock()).audit(against, progress("looked at"));
        if (seal && found instanceof Validated.Valid<AuditSheet>(AuditSheet sheet) && sheet.findings().isEmpty()) {
            print(sheet.seal());
            return ExitCode.OK.status();
        }
        return AuditPrint.report(found, "", printout());
    }
}

package icequill.cli.book;

import icequill.cli.terminal.AuditPrint;
import icequill.cli.terminal.BookCommand;
import icequill.office.care.BookMaintenance;
import java.nio.file.Path;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a book out of a backup. */
@Command(name = "restore", mixinStandardHelpOptions = true, description = "Makes the shop's book out of a backup, and audits it. The shop must have no book yet.", footerHeading = "%nExamples:%n", footer = {
        "  icequill restore /media/stick/book-2026-05-14.zip --shop my-shop",
        "  icequill restore --from-papers --shop my-shop"})
public final class RestoreCommand extends BookCommand {

    @ArgGroup(multiplicity = "1")
    private From from = new From();

    /** What the book is made from. */
    static final class From {

        @Parameters(paramLabel = "FILE", description = "A backup.")
        private @Nullable Path file;

        @Option(names = "--from-papers", description = "Take the papers that the book lacks out of their PDFs in papers/issued; what cannot be read is listed, and numbers go on after the highest.")
        private boolean fromPapers;
    }

    public RestoreCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path file = from.file;
        if (from.fromPapers || file == null) {
            return AuditPrint.report(BookMaintenance.of(folder(), clock()).restoreFromPapers(progress("looked at")),
                    "Took what the book lacked out of its papers. ", printout());
        }
        return AuditPrint.report(BookMaintenance.of(folder(), clock()).restore(file, progress("restored")),
                "Restored from " + file + ". ", printout());
    }
}

package icequill.cli;

import icequill.office.BookKeeping;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Makes a book out of a backup. */
@Command(name = "restore", mixinStandardHelpOptions = true, description = "Makes the shop's book out of a backup, and audits it. The shop must have no book yet.", footerHeading = "%nExamples:%n", footer = {
        "  icequill restore /media/stick/book-2026-05-14.zip --shop my-shop"})
final class RestoreCommand extends BookCommand {

    @Parameters(paramLabel = "FILE", description = "The backup.")
    private Path file = Path.of("");

    RestoreCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return AuditPrint.report(BookKeeping.of(folder(), clock()).restore(file, progress("restored")),
                "Restored from " + file + ". ", printout());
    }
}

package icequill.cli.book;

import icequill.cli.terminal.AuditPrint;
import icequill.cli.terminal.BookCommand;
import icequill.office.care.BookMaintenance;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a backup of the book. */
@Command(name = "backup", mixinStandardHelpOptions = true, description = "Writes the whole book, papers and all, into one file, while others go on working. Keep it on another disk; sites/, visits/ and pricing/ are not in it.", footerHeading = "%nExamples:%n", footer = {
        "  icequill backup /media/stick/book-2026-05-14.zip",
        "  icequill backup --verify /media/stick/book-2026-05-14.zip"})
public final class BackupCommand extends BookCommand {

    @Parameters(paramLabel = "FILE", description = "The file to write, which must not exist yet.")
    private Path file = Path.of("");

    @Option(names = "--verify", description = "Write nothing, but try whether FILE, a backup, can be restored.")
    private boolean verify;

    public BackupCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        if (verify) {
            return AuditPrint.report(BookMaintenance.verify(file, progress("tried")), file + " can be restored. ",
                    printout());
        }
        return AuditPrint.report(BookMaintenance.of(folder(), clock()).backup(file, progress("written")),
                "Wrote " + file + ". ", printout());
    }
}

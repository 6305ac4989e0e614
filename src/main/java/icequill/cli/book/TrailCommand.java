package icequill.cli.book;

import icequill.answer.TrailSheet;
import icequill.cli.terminal.BookCommand;
import icequill.office.care.TrailOffice;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells who changed what in the book. */
@Command(name = "trail", mixinStandardHelpOptions = true, description = "Tells who changed what in the book and when, the newest first, with what it was before and after.", footerHeading = "%nExamples:%n", footer = {
        "  icequill trail", "  icequill trail pennon-wharf --from 2026-05-01", "  icequill trail INV-2026-00012",
        "  icequill trail --who ann --from 2026-05-13 --until 2026-05-14"})
public final class TrailCommand extends BookCommand {

    private static final int MOST = 1_000_000;

    @Parameters(paramLabel = "ID", arity = "0..1", description = "Only this customer, site (with its machines), machine (SITE/MACHINE) or visit, or the paper of this number.")
    private @Nullable String id;

    @Option(names = "--from", paramLabel = "DAY", description = "Not before this day.")
    private @Nullable LocalDate from;

    @Option(names = "--until", paramLabel = "DAY", description = "Not after this day.")
    private @Nullable LocalDate until;

    @Option(names = "--who", paramLabel = "NAME", description = "Only what this user of the system did.")
    private @Nullable String who;

    @Option(names = "--most", paramLabel = "N", description = "How many changes at most. Default: ${DEFAULT-VALUE}.", defaultValue = "50")
    private int most = 50;

    public TrailCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(TrailOffice.of(folder(), clock()).trail(Optional.ofNullable(id), Optional.ofNullable(from),
                Optional.ofNullable(until), Optional.ofNullable(who), atMost()),
                this::print);
    }

    private int atMost() {
        return Math.clamp(most, 1, MOST);
    }

    private void print(TrailSheet sheet) {
        printLines(sheet.lines());
        if (sheet.trail().isEmpty()) {
            print("No change in the trail fits.");
        } else if (sheet.hasMore()) {
            print("There are older changes: --most " + 2 * atMost() + " shows more.");
        }
    }
}

package icequill.cli.book;

import icequill.answer.TrailSheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.MostOption;
import icequill.cli.terminal.PeriodOptions;
import icequill.office.care.TrailOffice;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells who changed what in the book. */
@Command(name = "trail", mixinStandardHelpOptions = true, description = "Tells who changed what in the book and when, the newest first, with what it was before and after.", footerHeading = "%nExamples:%n", footer = {
        "  icequill audit trail", "  icequill audit trail pennon-wharf-taproom --from 2026-05-01",
        "  icequill audit trail INV-2026-00012",
        "  icequill audit trail --who ann --from 2026-05-13 --until 2026-05-14"})
public final class AuditTrailCommand extends BookCommand {

    @Parameters(paramLabel = "ID", arity = "0..1", description = "Only this customer, site (with its machines), machine (SITE/MACHINE) or visit, or the paper of this number.")
    private @Nullable String id;

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    @Option(names = "--who", paramLabel = "NAME", description = "Only what this user of the system did.")
    private @Nullable String who;

    @Mixin
    private MostOption most = new MostOption();

    public AuditTrailCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(TrailOffice.of(folder(), clock()).trail(Optional.ofNullable(id), period.period(),
                Optional.ofNullable(who), most.most()), this::print);
    }

    private void print(TrailSheet sheet) {
        printLines(sheet.lines());
        if (sheet.trail().isEmpty()) {
            print("No change in the trail fits.");
        } else if (sheet.hasMore()) {
            print("There are older changes: --most " + 2 * most.most() + " shows more.");
        }
    }
}

package icequill.cli.claim;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.cli.terminal.VisitName;
import icequill.office.claim.ClaimOffice;
import icequill.shop.ShopDay;
import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Notes what is to be claimed. */
@Command(name = "note", mixinStandardHelpOptions = true, description = "Notes that the work which a visit did under a warranty is to be claimed: of whom, how much by his rules, and by when.", footerHeading = "%nExample:%n", footer = "  icequill claim note warranty-pump-bakery")
public final class ClaimNoteCommand extends BookCommand {

    @Mixin
    private VisitName visit = new VisitName();

    @Option(names = "--on", paramLabel = "DAY", description = "On which day; today if left out.")
    private @Nullable LocalDate day;

    public ClaimNoteCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(ClaimOffice.of(folder(), clock()).note(visit.text(),
                day == null ? ShopDay.today(folder(), clock()) : day),
                list -> list.claims().forEach(claim -> print(Table.of(claim.rows(), 2))));
    }
}

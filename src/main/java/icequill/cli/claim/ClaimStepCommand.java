package icequill.cli.claim;

import icequill.answer.claim.ClaimSheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.claim.ClaimOffice;
import icequill.problem.Validated;
import icequill.shop.ShopDay;
import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What all commands share that note what happened to a claim. */
abstract class ClaimStepCommand extends BookCommand {

    @Parameters(index = "0", paramLabel = "CLAIM", description = "The claim, called as its visit is.")
    private String claim = "";

    @Option(names = "--on", paramLabel = "DAY", description = "On which day; today if left out.")
    private @Nullable LocalDate day;

    ClaimStepCommand(Clock clock) {
        super(clock);
    }

    /** Notes it, and tells the claim as it is then. */
    abstract Validated<ClaimSheet> step(ClaimOffice office, String id, LocalDate when);

    @Override
    public final Integer call() {
        return show(step(ClaimOffice.of(folder(), clock()), claim,
                day == null ? ShopDay.today(folder(), clock()) : day), sheet -> print(Table.of(sheet.rows(), 2)));
    }
}

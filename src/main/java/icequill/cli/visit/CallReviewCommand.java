package icequill.cli.visit;

import icequill.answer.Hindsight;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.HindsightOffice;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Holds last year's forecast against the calls in the book. */
@Command(name = "review", mixinStandardHelpOptions = true, description = "Holds what was to be expected of the last twelve months, with the cleanings that the book has, against the calls that it has: by site, by cause and in all. For the owner.", footerHeading = "%nExamples:%n", footer = {
        "  icequill call review",
        "  icequill call review --date 2027-02-10 --json", "",
        "A call is a visit that says who asked for it. It was for the side that it",
        "cleaned, or for a fault, where it cleaned nothing and put a part in."})
public final class CallReviewCommand extends BookCommand {

    @Option(names = "--date", paramLabel = "D", description = "Look at the twelve months before this day. Default: today.")
    private @Nullable LocalDate date;

    public CallReviewCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = pricing(folder());
        LocalDate until = date == null ? ShopDay.today(folder, clock()) : date;
        return show(HindsightOffice.of(folder, clock()).year(until), this::print);
    }

    private void print(Hindsight found) {
        print(found.heading());
        print("");
        print(Table.of(Hindsight.HEAD, found.bySite(), 1));
        print("");
        print("At all of these sites, by cause:");
        print("");
        print(Table.of(Hindsight.HEAD, found.byCause(), 1));
        print("");
        found.notes().forEach(this::print);
    }
}

package icequill.cli.visit;

import icequill.answer.Hindsight;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.DayOption;
import icequill.cli.terminal.Table;
import icequill.office.HindsightOffice;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Holds last year's forecast against the calls in the book. */
@Command(name = "review", mixinStandardHelpOptions = true, description = "Holds what was to be expected of the twelve months before the day, with the cleanings that the book has, against the calls that it has: by site, by cause and in all. For the owner.", footerHeading = "%nExamples:%n", footer = {
        "  icequill call review",
        "  icequill call review --date 2027-02-10 --json", "",
        "A call is a visit that says who asked for it. It was for the side that it",
        "cleaned, or for a fault, where it cleaned nothing and put a part in."})
public final class CallReviewCommand extends BookCommand {

    @Mixin
    private DayOption day = new DayOption();

    public CallReviewCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = pricing(folder());
        return show(HindsightOffice.of(folder, clock()).year(day.in(folder, clock())), this::print);
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

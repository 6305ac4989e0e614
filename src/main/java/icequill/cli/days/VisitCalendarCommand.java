package icequill.cli.days;

import icequill.answer.days.CalendarSheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.office.days.CalendarOffice;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows the planned visits of somebody, and writes them as a calendar for his phone. */
@Command(name = "calendar", mixinStandardHelpOptions = true, description = "Shows the planned visits of a person, with address, hours and whom to call, and writes them as a calendar for a phone (iCalendar). It says nothing of prices.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit calendar --person \"Ada Quill\" --from 2026-07-01 --until 2026-12-31",
        "  icequill visit calendar --person \"Ada Quill\" --ics ada.ics"})
public final class VisitCalendarCommand extends BookCommand {

    @Option(names = "--person", required = true, paramLabel = "NAME", description = "Whose visits, as visits name him.")
    private String person = "";

    @Option(names = "--from", paramLabel = "DAY", description = "The first day. Default: today.")
    private @Nullable LocalDate from;

    @Option(names = "--until", paramLabel = "DAY", description = "The last day; three months after --from if left out.")
    private @Nullable LocalDate until;

    @Option(names = "--ics", paramLabel = "FILE", description = "Also write them as a calendar, in place of an earlier file.")
    private @Nullable Path ics;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public VisitCalendarCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = folder();
        LocalDate first = from == null ? ShopDay.today(folder, clock()) : from;
        Path target = ics;
        Validated<CalendarSheet> calendar = CalendarOffice.of(ShopBook.of(folder, clock())).calendar(person, first,
                until == null ? CalendarOffice.usualUntil(first) : until, reader.language());
        return show(target == null ? calendar : calendar.then(sheet -> sheet.write(target).map(written -> sheet)),
                sheet -> printLines(sheet.lines().stream()));
    }
}

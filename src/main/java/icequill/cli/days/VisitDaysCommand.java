package icequill.cli.days;

import icequill.answer.days.DayProposals.Going;
import icequill.answer.days.DayProposals.Proposal;
import icequill.answer.days.DaysSheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.office.days.ChosenDay;
import icequill.office.days.DaysOffice;
import icequill.office.days.DueOffice;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Proposes days for the visits that are due. */
@Command(name = "days", mixinStandardHelpOptions = true, description = "Proposes days, hours and persons for the visits that are due, each with its reasons. What is planned already is not moved. With --store the proposals are stored as planned visits.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit days                                    due within six weeks, for all who made visits",
        "  icequill visit days --from 2027-08-10 --until 2027-09-30 --person \"Ada Quill\"",
        "  icequill visit days --from 2027-08-10 --store"})
public final class VisitDaysCommand extends BookCommand {

    @Option(names = "--from", paramLabel = "DAY", description = "No day before this one is proposed. Default: tomorrow.")
    private @Nullable LocalDate from;

    @Option(names = "--until", paramLabel = "DAY", description = "Visits due up to this day; six weeks after --from if left out.")
    private @Nullable LocalDate until;

    @Option(names = "--person", paramLabel = "NAME", description = "Only for this person; may be given several times.")
    private List<String> people = new ArrayList<>();

    @Option(names = "--store", description = "Stores what is proposed as planned visits, all of it or nothing.")
    private boolean isStored;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public VisitDaysCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = folder();
        LocalDate first = from == null ? ShopDay.today(folder, clock()).plusDays(1) : from;
        LocalDate last = until == null ? DueOffice.usualUntil(first) : until;
        ShopBook book = ShopBook.of(folder, clock());
        return show(DaysOffice.of(book).propose(first, last, people, reader.language())
                .then(sheet -> isStored ? stored(book, sheet, first, last) : Validated.valid(sheet)),
                sheet -> printLines(sheet.lines().stream()));
    }

    private static Validated<DaysSheet> stored(ShopBook book, DaysSheet sheet, LocalDate first, LocalDate last) {
        List<Proposal> visits = sheet.data().visits();
        return DaysOffice.of(book).store(IntStream.range(0, visits.size())
                .mapToObj(row -> chosen(row, visits.get(row))).toList(), first, last)
                .map(sheet::stored);
    }

    private static ChosenDay chosen(int row, Proposal visit) {
        return new ChosenDay(row, visit.key(), visit.day(), LocalTime.parse(visit.begins()),
                visit.going().stream().map(Going::person).toList());
    }
}

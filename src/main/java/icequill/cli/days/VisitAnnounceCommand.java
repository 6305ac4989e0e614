package icequill.cli.days;

import icequill.answer.days.AnnouncementSheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.CopyOptions;
import icequill.cli.terminal.CustomerLanguage;
import icequill.cli.terminal.MailOption;
import icequill.life.telling.Telling;
import icequill.office.days.AnnouncementOffice;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells customers of planned visits. */
@Command(name = "announce", mixinStandardHelpOptions = true, description = "Writes for planned visits what their customers are told: who comes when, what is done, what to prepare and whom to call; or notes that they were told (--told). Shows who knows and who has to be told anew.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit announce --from 2026-07-13 --until 2026-07-19",
        "  icequill visit announce summer-cleaning-bakery --lang es",
        "  icequill visit announce summer-cleaning-bakery --told telephone --on 2026-07-06"})
public final class VisitAnnounceCommand extends BookCommand {

    @Parameters(arity = "0..*", paramLabel = "VISIT", description = "Planned visits, by id; left out: those of the days.")
    private List<String> visits = List.of();

    @Option(names = "--from", paramLabel = "DAY", description = "Planned from this day on; today if left out.")
    private @Nullable LocalDate from;

    @Option(names = "--until", paramLabel = "DAY", description = "Planned up to this day; a week from --from if left out.")
    private @Nullable LocalDate until;

    @Option(names = "--told", paramLabel = "WAY", description = "Write nothing, note that the customers were told: paper, telephone or mail.")
    private Telling.@Nullable Way told;

    @Option(names = "--on", paramLabel = "DAY", description = "The day that the paper bears, or on which they were told. Default: today.")
    private @Nullable LocalDate day;

    @Mixin
    private CustomerLanguage language = new CustomerLanguage();

    @Mixin
    private CopyOptions copy = new CopyOptions();

    @Mixin
    private MailOption mail = new MailOption();

    public VisitAnnounceCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = folder();
        AnnouncementOffice office = AnnouncementOffice.of(ShopBook.of(folder, clock()));
        LocalDate today = ShopDay.today(folder, clock());
        LocalDate on = day == null ? today : day;
        LocalDate first = from == null ? today : from;
        Validated<AnnouncementSheet> asked = visits.isEmpty()
                ? office.between(first, until == null ? AnnouncementOffice.usualUntil(first) : until,
                        Optional.empty())
                : office.named(visits.stream().map(this::id).toList(), Optional.empty());
        return show(asked.then(sheet -> told == null
                ? office.write(sheet, new PaperOptions(Optional.empty(), on, language.language(),
                        copy.extras(false, mail.isSet())))
                : office.told(sheet.data().visits().stream().map(visit -> visit.visit()).toList(), told, on,
                        Optional.empty())),
                sheet -> printLines(sheet.lines().stream()));
    }
}

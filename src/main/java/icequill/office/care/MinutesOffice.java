package icequill.office.care;

import icequill.answer.minutes.MinutesSheet;
import icequill.ledger.entries.VisitEntry;
import icequill.outlook.minutes.TaskTime;
import icequill.outlook.minutes.VisitTime;
import icequill.outlook.minutes.WorkedMinutes;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.render.words.Sentences;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.work.Task;
import icequill.work.Visit;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The owner's look at how long tasks take, against what is planned for them. */
public final class MinutesOffice {

    private final ShopBook book;

    private MinutesOffice(ShopBook book) {
        this.book = book;
    }

    public static MinutesOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static MinutesOffice of(ShopBook book) {
        return new MinutesOffice(book);
    }

    /**
     * The visits of a period by the minutes of tasks of a day.
     *
     * @param language empty for the shop's
     */
    public Validated<MinutesSheet> of(AskedPeriod period, LocalDate day, Optional<Language> language) {
        return new DoneVisits(book).of(period).then(entries -> book.together(held -> {
            ShopFolder folder = BookForms.shop(held);
            Problems problems = new Problems();
            Optional<Rates> rates = folder.schedule().flatMap(schedule -> problems.take(schedule.asOf(day)));
            List<TaskTime> all = rates.map(found -> read(folder, entries, found)).orElse(List.of());
            problems.addAll(folder.problems());
            return problems.or(() -> sheet(folder.shop().orElseThrow(), rates.orElseThrow(), all, language));
        }));
    }

    private static List<TaskTime> read(ShopFolder folder, List<VisitEntry> entries, Rates rates) {
        List<TaskTime> all = new ArrayList<>();
        for (VisitEntry entry : entries) {
            Optional<Visit> visit = folder.contents().visit(BookForms.form(entry))
                    .filter(found -> found.sale().isEmpty());
            Optional<Site> site = visit.flatMap(found -> folder.site(found.site(), Place.NOWHERE));
            site.ifPresent(where -> all.add(new TaskTime(visit.orElseThrow(), where, rates, folder.timetables())));
        }
        return all;
    }

    private static MinutesSheet sheet(Shop shop, Rates rates, List<TaskTime> all, Optional<Language> language) {
        List<TaskTime> known = all.stream().filter(TaskTime::isKnown).toList();
        List<VisitTime> times = known.stream().flatMap(task -> task.time().stream()).toList();
        Map<String, Integer> now = rates.tasks().stream().filter(task -> task.attended() > 0)
                .collect(Collectors.toMap(Task::id, Task::attended));
        return new MinutesSheet(WorkedMinutes.of(times), now, all.size() - known.size(), known.size() - times.size(),
                Sentences.of(language.orElse(shop.language()), shop.address().country()));
    }
}

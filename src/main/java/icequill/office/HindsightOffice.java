package icequill.office;

import icequill.answer.Hindsight;
import icequill.answer.HindsightAssembly;
import icequill.answer.NewerSite;
import icequill.answer.YearSpan;
import icequill.forecast.inputs.ForecastRates;
import icequill.ledger.entries.VisitEntry;
import icequill.outlook.SideWork;
import icequill.outlook.SiteYear;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.work.Visit;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The office that looks back: what was forecast, and what came of it by the book. */
public final class HindsightOffice {

    private final ShopBook book;

    private HindsightOffice(ShopBook book) {
        this.book = book;
    }

    public static HindsightOffice of(Path folder, Clock clock) {
        return new HindsightOffice(ShopBook.of(folder, clock));
    }

    /**
     * The twelve months before a day.
     *
     * @param until the day after the last
     */
    public Validated<Hindsight> year(LocalDate until) {
        return book.read(StandingVisits::bySite).then(visits -> book
                .together(held -> hindsight(BookForms.shop(held), visits, until)));
    }

    private static Validated<Hindsight> hindsight(ShopFolder shop, Map<String, List<VisitEntry>> recorded,
            LocalDate until) {
        LocalDate begins = until.minusYears(1);
        Problems problems = new Problems();
        Optional<ForecastRates> then = shop.forecast(begins);
        Optional<ForecastRates> rates = then.or(() -> shop.forecast(until));
        if (rates.isEmpty() && shop.problems().isEmpty()) {
            problems.add(new Problem(Code.MISSING, Place.ofFile("pricing"),
                    "there is nothing to forecast by on " + begins + " or " + until, "a file of kind: forecast"));
        }
        List<SiteYear> years = new ArrayList<>();
        List<NewerSite> newer = new ArrayList<>();
        recorded.forEach((id, entries) -> {
            LocalDate first = entries.getFirst().began().toLocalDate();
            if (first.isAfter(begins)) {
                newer.add(new NewerSite(id, first));
            } else {
                rates.flatMap(found -> year(shop, id, entries, found, begins, until)).ifPresent(years::add);
            }
        });
        years.forEach(year -> problems.addAll(year.problems()));
        if (newer.size() == recorded.size()) {
            problems.add(tooYoung(newer, begins));
        }
        LocalDate guessesOf = then.isPresent() ? begins : until;
        return GlyphCheck.report(shop, problems)
                .or(() -> new HindsightAssembly(new YearSpan(begins, until, guessesOf), years, newer)
                        .hindsight());
    }

    private static Optional<SiteYear> year(ShopFolder shop, String id, List<VisitEntry> entries, ForecastRates rates,
            LocalDate begins, LocalDate until) {
        Optional<Site> site = shop.site(id, Place.NOWHERE);
        List<Visit> visits = entries.stream().flatMap(entry -> shop.contents().visit(BookForms.form(entry)).stream())
                .toList();
        return site.flatMap(where -> shop.schedule().map(schedule -> new SiteYear(where, visits,
                new SideWork(rates.at(where.kind()), schedule), begins, until)));
    }

    private static Problem tooYoung(List<NewerSite> newer, LocalDate begins) {
        return newer.stream().map(NewerSite::firstVisit).min(LocalDate::compareTo)
                .map(first -> new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "the book has less than a year: its first visit was on " + first + ", after " + begins,
                        "from " + first.plusYears(1) + " on, or with --date " + first.plusYears(1)))
                .orElse(StandingVisits.NONE);
    }
}

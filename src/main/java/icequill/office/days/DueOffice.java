package icequill.office.days;

import icequill.agreement.Scope;
import icequill.answer.days.DueSheet;
import icequill.answer.days.DueVisits;
import icequill.answer.days.DueVisits.Cleaning;
import icequill.answer.days.DueVisits.Visit;
import icequill.answer.site.SiteCard;
import icequill.answer.site.SiteCardSheet;
import icequill.days.Attended;
import icequill.days.CleaningDue;
import icequill.days.DueVisit;
import icequill.ledger.entries.SiteEntry;
import icequill.office.care.HistoryOffice;
import icequill.office.care.SiteOffice;
import icequill.party.Language;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The office that knows which visits are due. */
public final class DueOffice {

    /** Further ahead nobody plans visits. */
    private static final int MOST_MONTHS = 24;

    private static final int USUAL_WEEKS = 6;

    private final ShopBook book;

    private DueOffice(ShopBook book) {
        this.book = book;
    }

    public static DueOffice of(ShopBook book) {
        return new DueOffice(book);
    }

    /** Up to which day visits are looked for where nobody says. */
    public static LocalDate usualUntil(LocalDate from) {
        return from.plusWeeks(USUAL_WEEKS);
    }

    /**
     * Visits that are due up to a day.
     *
     * @param day as of which; what was due before and is not done is late
     * @param language of the reader; empty for the shop's
     */
    public Validated<DueSheet> due(LocalDate day, LocalDate until, Optional<Language> language) {
        return spans(day, until).then(last -> book.together(held -> {
            ShopFolder shop = BookForms.shop(held);
            return HistoryOffice.sentences(shop, language).then(sentences -> held
                    .read(open -> Validated.valid(AttendedVisits.in(open)))
                    .then(attended -> DueCare.of(held, attended, day, last)
                            .then(care -> sites(held, care, attended, day,
                                    last, language).map(
                                            sites -> new DueSheet(DueVisits.of(day, last,
                                                    care.visits().stream()
                                                            .map(visit -> told(visit, attended, sentences)).toList(),
                                                    sites, care.problems()), sentences)))));
        }));
    }

    /** The last day, where it is neither before the first nor too far. */
    static Validated<LocalDate> spans(LocalDate day, LocalDate until) {
        return until.isBefore(day) || until.isAfter(day.plusMonths(MOST_MONTHS))
                ? Validated.invalid(new Problem(Code.OUT_OF_RANGE, new Place("", 0, "until"),
                        "visits due up to " + until + ", seen from " + day,
                        "a day from then on, and not after " + day.plusMonths(MOST_MONTHS)))
                : Validated.valid(until);
    }

    private static Visit told(DueVisit due, AttendedVisits attended, Sentences sentences) {
        Optional<Attended> by = due.standing().by();
        return new Visit(due.agreement(), due.site().id(), due.site().name(), due.day(),
                sentences.in(due.work().visit().slot().name()), due.work().machines().stream().sorted().toList(),
                due.people(), due.minutes(),
                by.flatMap(visit -> visit.people().stream().findFirst())
                        .or(() -> attended.lastPerson(due.site().id())),
                due.standing().state(), by.map(Attended::visit), by.map(Attended::day),
                due.work().visit().moved().map(sentences::say).map(Sentences::capitalized));
    }

    private static Validated<List<Cleaning>> sites(ShopBook held, DueCare care, AttendedVisits attended, LocalDate day,
            LocalDate until, Optional<Language> language) {
        List<Scope> scopes = BookForms.shop(held).schedule().flatMap(schedule -> schedule.asOf(day).found())
                .map(rates -> rates.plans().scopes()).orElse(List.of());
        return held.read(open -> Validated.valid(open.entries().sites().stream().map(SiteEntry::id)
                .filter(site -> !care.cared().contains(site) && !attended.at(site).isEmpty()).toList()))
                .map(sites -> sites.stream()
                        .flatMap(site -> SiteOffice.of(held).card(site, day, language).map(SiteCardSheet::data).found()
                                .flatMap(card -> cleaning(card, attended.at(site), scopes, day)).stream())
                        .filter(cleaning -> !cleaning.due().isAfter(until)).toList());
    }

    private static Optional<Cleaning> cleaning(SiteCard card, List<Attended> attended, List<Scope> scopes,
            LocalDate day) {
        return CleaningDue.of(card.nextDue(), card.months(), attended, scopes)
                .map(next -> new Cleaning(card.id(), card.name(), next.due(), card.months(), next.last(),
                        next.due().isBefore(day), next.planned().map(Attended::visit)));
    }
}

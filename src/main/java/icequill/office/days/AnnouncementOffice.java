package icequill.office.days;

import icequill.answer.WrittenPaper;
import icequill.answer.days.AnnouncementSheet;
import icequill.answer.days.Announcements;
import icequill.files.form.VisitNames;
import icequill.ledger.Reading;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitQuestion;
import icequill.life.telling.Telling;
import icequill.life.telling.Tellings;
import icequill.office.care.HistoryOffice;
import icequill.office.letters.LooseMails;
import icequill.office.letters.LoosePaper;
import icequill.papers.AnnouncementAssembly;
import icequill.party.Language;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.VisitLoader;
import icequill.shop.life.VisitTellings;
import icequill.visits.VisitContext;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The office that tells customers when somebody comes. */
public final class AnnouncementOffice {

    private static final int USUAL_DAYS = 6;

    private final ShopBook book;

    private AnnouncementOffice(ShopBook book) {
        this.book = book;
    }

    public static AnnouncementOffice of(ShopBook book) {
        return new AnnouncementOffice(book);
    }

    /** Up to which day visits are shown where nobody says: a week. */
    public static LocalDate usualUntil(LocalDate from) {
        return from.plusDays(USUAL_DAYS);
    }

    /**
     * Planned visits that begin within some days.
     *
     * @param language of the reader; empty for the shop's
     */
    public Validated<AnnouncementSheet> between(LocalDate from, LocalDate until, Optional<Language> language) {
        return sheet(language, open -> {
            Set<String> withdrawn = open.entries().withdrawals().keySet();
            return Validated.valid(open.entries()
                    .visits(new VisitQuestion(List.of(), Optional.of(from), Optional.of(until))).stream()
                    .filter(entry -> entry.isPlanned() && !entry.isForgotten() && !withdrawn.contains(entry.id()))
                    .toList());
        });
    }

    /** Planned visits by their ids. */
    public Validated<AnnouncementSheet> named(List<String> visits, Optional<Language> language) {
        return sheet(language, open -> planned(open, visits));
    }

    private interface Asked {
        Validated<List<VisitEntry>> of(Reading open);
    }

    private Validated<AnnouncementSheet> sheet(Optional<Language> language, Asked asked) {
        return HistoryOffice.sentences(BookForms.shop(book), language)
                .then(sentences -> book.read(open -> asked.of(open).map(entries -> new AnnouncementSheet(
                        new Announcements(entries.stream().map(entry -> row(open, entry)).toList(), List.of()),
                        sentences))));
    }

    private static Announcements.Visit row(Reading open, VisitEntry entry) {
        Tellings told = VisitTellings.of(open, entry.id());
        Optional<Telling> last = told.all().isEmpty() ? Optional.empty() : Optional.of(told.all().getLast());
        return new Announcements.Visit(entry.id(), entry.site(),
                open.entries().siteNow(entry.site()).found().map(SiteEntry::name).orElse(entry.site()),
                entry.began(), entry.ended(), VisitNames.of(entry.data()).people(),
                told.state(entry.began().toLocalDateTime(), entry.ended().toLocalDateTime()),
                last.map(Telling::day), last.map(Telling::way));
    }

    private static Validated<List<VisitEntry>> planned(Reading open, List<String> visits) {
        Problems problems = new Problems();
        List<VisitEntry> found = new ArrayList<>();
        for (String id : visits) {
            problems.take(open.entries().visit(id)).ifPresent(entry -> {
                if (!entry.isPlanned() || entry.isForgotten() || open.entries().withdrawal(id).isPresent()) {
                    problems.add(Code.NOT_ALLOWED, Place.NOWHERE, "visit \"" + id + "\" is not to come",
                            "a planned visit that stands");
                }
                found.add(entry);
            });
        }
        return problems.or(() -> found);
    }

    /** Writes an announcement of each into papers/, in the language of its customer, in place of an earlier one. */
    public Validated<AnnouncementSheet> write(AnnouncementSheet visits, PaperOptions options) {
        List<Path> files = new ArrayList<>();
        Problems problems = new Problems();
        visits.data().visits().forEach(visit -> problems.take(hand(visit.visit())
                .then(hand -> written(hand, visit.visit(), options))).ifPresent(files::addAll));
        return problems.or(() -> visits.with(files));
    }

    private Validated<List<Path>> written(VisitContext hand, String visit, PaperOptions options) {
        return new LooseMails(book).write(paper(hand, visit, options), options.extras()).map(WrittenPaper::files);
    }

    /** The announcement of one, not written yet. */
    public Validated<LoosePaper> announcementOf(String visit, PaperOptions options) {
        return named(List.of(visit), Optional.empty()).then(planned -> hand(visit))
                .map(hand -> paper(hand, visit, options));
    }

    private Validated<VisitContext> hand(String visit) {
        return new VisitLoader(BookForms.shop(book)).of(new FormName.InBook(visit));
    }

    private static LoosePaper paper(VisitContext hand, String visit, PaperOptions options) {
        return LoosePaper.at(hand.site(), "announcement-" + visit,
                new AnnouncementAssembly(hand, hand.language(options.language())).announcement(options.date()));
    }

    /** Notes that customers were told of visits as they are planned now; all of them or none. */
    public Validated<AnnouncementSheet> told(List<String> visits, Telling.Way way, LocalDate day,
            Optional<Language> language) {
        if (visits.isEmpty()) {
            return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "no visit is named", "planned visits"));
        }
        return ShopDay.notAhead(day, ShopDay.today(book.folder(), book.clock()), new Place("", 0, "day"))
                .then(valid -> book.write(open -> planned(open, visits).map(entries -> {
                    entries.forEach(entry -> open.lifeSteps().add(VisitTellings.next(open, entry.id(),
                            Optional.of(entry.site()), new Telling(day, way,
                                    entry.began().toLocalDateTime(), entry.ended().toLocalDateTime()))));
                    return entries;
                }))).then(entries -> named(visits, language));
    }
}

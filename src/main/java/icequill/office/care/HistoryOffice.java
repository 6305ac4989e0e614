package icequill.office.care;

import icequill.answer.claim.ClaimSheet;
import icequill.answer.history.HistoryCounts;
import icequill.answer.history.HistorySheet;
import icequill.answer.history.Period;
import icequill.answer.history.SiteHistory;
import icequill.answer.history.ToldPaper;
import icequill.answer.history.ToldVisit;
import icequill.answer.history.VisitAnswer;
import icequill.answer.history.VisitSheet;
import icequill.answer.history.VisitTelling;
import icequill.ledger.Reading;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.office.register.RegisterOffice;
import icequill.party.Language;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.ShopFolder;
import icequill.shop.life.ClaimLife;
import icequill.work.Visit;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The office that tells what was done where. */
public final class HistoryOffice {

    private final ShopBook book;

    private HistoryOffice(ShopBook book) {
        this.book = book;
    }

    public static HistoryOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static HistoryOffice of(ShopBook book) {
        return new HistoryOffice(book);
    }

    /** What the book holds, before it is put into words. */
    private record Held(SiteEntry site, Optional<String> machine, Period period, List<FoundVisits.One> visits) {}

    /**
     * The history of a site, or of one of its machines.
     *
     * @param machine by id; empty for all
     * @param language of the reader; empty for the shop's
     */
    public Validated<HistorySheet> site(String site, Optional<String> machine, AskedPeriod asked,
            Optional<Language> language) {
        return asked.period().then(period -> book.read(open -> held(open, site, machine, period)))
                .then(held -> telling(shop -> told(shop, held, language)));
    }

    private static Validated<Held> held(Reading open, String site, Optional<String> machine, Period period) {
        return RegisterOffice.found(open, site)
                .then(entry -> VisitScope.of(open, Optional.of(site), Optional.empty(), machine).map(scope -> {
                    FoundVisits visits = FoundVisits.in(open);
                    return new Held(entry, scope.machine(), period, visits.of(visits.entries(scope, period)));
                }));
    }

    /** One visit, told like those of a history. */
    public Validated<VisitSheet> visit(String id, Optional<Language> language) {
        LocalDate today = ShopDay.today(book.folder(), book.clock());
        return book
                .read(open -> open.entries().visit(id).map(entry -> new Claimed(
                        FoundVisits.in(open).of(List.of(entry)).getFirst(),
                        ClaimLife.ofVisit(open, id).stream().map(life -> ClaimSheet.of(life, site(open, entry), today))
                                .toList())))
                .then(one -> telling(shop -> of(shop, language).map(told -> new VisitSheet(
                        one.answer(told), told.sentences()))));
    }

    private static String site(Reading open, VisitEntry visit) {
        return open.entries().siteNow(visit.site()).found().map(SiteEntry::name).orElse("");
    }

    /** A visit with the claims of what it did under a warranty. */
    private record Claimed(FoundVisits.One one, List<ClaimSheet> claims) {

        VisitAnswer answer(Telling told) {
            return new VisitAnswer(told.visit(one, one.entry().site(), Optional.empty()), papers(List.of(one)), claims,
                    claims.isEmpty() && one.withdrawal().isEmpty() && ClaimLife.isFor(one.entry()));
        }
    }

    private <T> Validated<T> telling(Function<ShopFolder, Validated<T>> work) {
        return book.together(held -> work.apply(BookForms.shop(held)));
    }

    private static Validated<HistorySheet> told(ShopFolder folder, Held held, Optional<Language> language) {
        SiteEntry entry = held.site();
        return of(folder, language).map(telling -> {
            List<ToldVisit> visits = held.visits().stream()
                    .map(one -> telling.visit(one, entry.id(), held.machine())).toList();
            List<ToldPaper> papers = papers(held.visits());
            return new HistorySheet(new SiteHistory(entry.id(), entry.name(), entry.storeNumber(), entry.address(),
                    held.machine().map(id -> telling.machine(entry.id(), id)), held.period(),
                    HistoryCounts.of(visits, papers), visits, papers), telling.sentences());
        });
    }

    /** Each once, in the order of issue. */
    private static List<ToldPaper> papers(Collection<FoundVisits.One> visits) {
        Map<String, IssuedPaper> papers = new LinkedHashMap<>();
        visits.stream().flatMap(visit -> visit.papers().stream())
                .forEach(paper -> papers.putIfAbsent(paper.number(), paper));
        return papers.values().stream().map(ToldPaper::of).toList();
    }

    private static Validated<Telling> of(ShopFolder folder, Optional<Language> language) {
        return sentences(folder, language).map(sentences -> new Telling(folder, sentences, new HashMap<>()));
    }

    /** In the language of the reader, or else the shop's; what is wrong with the shop where it is not known. */
    public static Validated<Sentences> sentences(ShopFolder folder, Optional<Language> language) {
        return folder.shop()
                .map(shop -> Validated.valid(
                        Sentences.of(language.orElse(shop.language()), shop.address().country())))
                .orElseGet(() -> new Validated.Invalid<>(folder.problems()));
    }

    /** Looks up what visits name. What is wrong with the shop's rates does not keep anybody from what was done. */
    private record Telling(ShopFolder folder, Sentences sentences, Map<String, Optional<Site>> sites) {

        /** Found once: the visits of a history are of few sites. */
        private Optional<Site> site(String id) {
            return sites.computeIfAbsent(id, asked -> folder.site(asked, Place.NOWHERE));
        }

        String machine(String site, String id) {
            return site(site).flatMap(found -> found.machine(id))
                    .map(machine -> new MachineName(machine, sentences).text()).orElse(id);
        }

        ToldVisit visit(FoundVisits.One one, String site, Optional<String> machine) {
            Optional<Visit> visit = one.entry().isForgotten()
                    ? Optional.empty()
                    : folder.contents().visit(BookForms.form(one.entry()));
            return new VisitTelling(site(site), sentences).told(new VisitTelling.Kept(one.entry(), one.state(), visit,
                    rates(one.entry().began().toLocalDate()), one.withdrawal(), one.papers(), machine));
        }

        private Optional<Rates> rates(LocalDate day) {
            return folder.schedule().flatMap(schedule -> schedule.asOf(day).found());
        }
    }
}

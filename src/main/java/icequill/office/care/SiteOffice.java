package icequill.office.care;

import icequill.agreement.CleaningInterval;
import icequill.answer.history.VisitState;
import icequill.answer.site.SiteCard;
import icequill.answer.site.SiteCard.CardMachine.LastVisit;
import icequill.answer.site.SiteCardSheet;
import icequill.files.form.VisitNames;
import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.office.register.RegisterOffice;
import icequill.party.Language;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.request.AgreementRequest;
import icequill.shop.AgreementsInForce;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.VisitLoader;
import icequill.work.Block;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The office that shows a site at a glance. */
public final class SiteOffice {

    private static final Set<VisitState> DONE = Set.of(VisitState.DONE, VisitState.BILLED);

    private final ShopBook book;

    private SiteOffice(ShopBook book) {
        this.book = book;
    }

    public static SiteOffice of(ShopBook book) {
        return new SiteOffice(book);
    }

    /** What the book holds of a site. */
    private record Held(String customer, List<VisitEntry> done) {}

    /**
     * The card of a site.
     *
     * @param day whose rules of cleaning it goes by
     * @param language of the reader; empty for the shop's
     */
    public Validated<SiteCardSheet> card(String id, LocalDate day, Optional<Language> language) {
        return book.read(open -> held(open, id)).then(held -> {
            ShopFolder shop = BookForms.shop(book);
            return HistoryOffice.sentences(shop, language).then(sentences -> shop.site(id, Place.NOWHERE)
                    .flatMap(site -> rates(shop, day).map(rates -> new SiteCardSheet(SiteCard.of(site, held.customer(),
                            interval(site, rates), lastVisits(held.done()), nextDue(shop, held.done()),
                            ahead(shop, site), agreements(shop, site, day), sentences),
                            sentences)))
                    .map(Validated::valid).orElseGet(() -> new Validated.Invalid<>(shop.problems())));
        });
    }

    private static Validated<Held> held(Reading open, String id) {
        return RegisterOffice.found(open, id)
                .then(entry -> VisitScope.of(open, Optional.of(id), Optional.empty(), Optional.empty()).map(scope -> {
                    FoundVisits visits = FoundVisits.in(open);
                    return new Held(entry.customer(), visits.of(visits.entries(scope, FoundVisits.EVER)).stream()
                            .filter(one -> DONE.contains(one.state())).map(FoundVisits.One::entry)
                            .sorted(Comparator.comparing(VisitEntry::began).reversed()).toList());
                }));
    }

    private static Optional<Rates> rates(ShopFolder shop, LocalDate day) {
        return shop.schedule().flatMap(schedule -> schedule.asOf(day).found());
    }

    private static CleaningInterval interval(Site site, Rates rates) {
        return CleaningInterval.of(site.kind(), site.conditions(), rates.plans().interval());
    }

    /** @param done the newest first */
    private static Map<String, LastVisit> lastVisits(List<VisitEntry> done) {
        Map<String, LastVisit> last = new LinkedHashMap<>();
        done.forEach(entry -> VisitNames.of(entry.data()).machines().forEach(
                machine -> last.putIfAbsent(machine, new LastVisit(entry.id(), entry.began().toLocalDate()))));
        return last;
    }

    private static List<String> agreements(ShopFolder shop, Site site, LocalDate day) {
        return new AgreementsInForce(shop).requests(site, day).map(AgreementRequest::number).sorted().toList();
    }

    /** What is wrong with it is told where a visit is priced by it. */
    private static List<Block.Held> ahead(ShopFolder shop, Site site) {
        return new VisitLoader(shop).held(site, "", new Problems());
    }

    private static Optional<LocalDate> nextDue(ShopFolder shop, List<VisitEntry> done) {
        return done.stream().filter(entry -> !entry.isForgotten())
                .flatMap(entry -> shop.contents().visit(BookForms.form(entry)).map(Visit::handover)
                        .flatMap(Visit.Handover::nextDue).stream())
                .findFirst();
    }
}

package icequill.office.refrigerant;

import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitQuestion;
import icequill.life.refrigerant.Handled;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.rates.Rates;
import icequill.shop.BookForms;
import icequill.shop.ShopFolder;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Reads what visits of the book did with refrigerant. Each site and each day's rates are looked up once. */
final class HandledVisits {

    /** The key of a visit's form that says so; visits without it are not read. */
    private static final String KEY = "\"refrigerant\"";

    private final ShopFolder shop;
    private final Map<String, Optional<Site>> sites = new HashMap<>();
    private final Map<LocalDate, Optional<Rates>> rates = new HashMap<>();

    HandledVisits(ShopFolder shop) {
        this.shop = shop;
    }

    /** By day. */
    List<Handled> of(Reading open) {
        Set<String> withdrawn = open.entries().withdrawals().keySet();
        return open.entries().visits(VisitQuestion.ALL).stream()
                .filter(entry -> !entry.isPlanned() && entry.data().contains(KEY) && !withdrawn.contains(entry.id()))
                .flatMap(this::of).toList();
    }

    private Stream<Handled> of(VisitEntry entry) {
        return shop.contents().visit(BookForms.form(entry)).stream().flatMap(visit -> site(visit.site()).stream()
                .flatMap(site -> rates(visit.day()).stream().flatMap(prices -> handled(visit, site, prices))));
    }

    private static Stream<Handled> handled(Visit visit, Site site, Rates prices) {
        return visit.findings().stream().flatMap(finding -> Handled.of(visit, finding, site, prices).stream());
    }

    Optional<Site> site(String id) {
        return sites.computeIfAbsent(id, name -> shop.site(name, Place.NOWHERE));
    }

    Optional<Rates> rates(LocalDate day) {
        return rates.computeIfAbsent(day,
                date -> shop.schedule().flatMap(schedule -> schedule.asOf(date).found()));
    }
}

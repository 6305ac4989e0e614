package icequill.office.refrigerant;

import icequill.answer.WrittenPaper;
import icequill.answer.history.Period;
import icequill.answer.refrigerant.RefrigerantSheet;
import icequill.document.RefrigerantRecord;
import icequill.document.RefrigerantRecord.OfMachine;
import icequill.document.Where;
import icequill.ledger.Reading;
import icequill.ledger.papers.Pdf;
import icequill.life.refrigerant.Handled;
import icequill.life.refrigerant.RefrigerantLog;
import icequill.life.refrigerant.RefrigerantLog.Standing;
import icequill.office.care.AskedPeriod;
import icequill.office.care.HistoryOffice;
import icequill.office.care.VisitScope;
import icequill.office.writing.PaperWriter;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.RateSchedule;
import icequill.rates.RefrigerantRules;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** The office that keeps the log of refrigerant, as recorded visits have it. */
public final class RefrigerantOffice {

    private final ShopBook book;

    private RefrigerantOffice(ShopBook book) {
        this.book = book;
    }

    public static RefrigerantOffice of(ShopBook book) {
        return new RefrigerantOffice(book);
    }

    /**
     * Whose log is asked for.
     *
     * @param site by id; empty for all of the shop
     * @param machine by id at the site, or SITE/MACHINE; empty for all
     */
    public record Scope(Optional<String> site, Optional<String> machine, AskedPeriod period) {}

    /** What was found, before it is put into words. */
    private record Found(HandledVisits visits, VisitScope where, Period period, RefrigerantLog log) {}

    /**
     * What was added and recovered.
     *
     * @param language of the reader; empty for the shop's
     */
    public Validated<RefrigerantSheet> log(Scope scope, Optional<Language> language) {
        return found(scope, (shop, found) -> HistoryOffice.sentences(shop, language)
                .map(sentences -> new RefrigerantTelling(found.visits(), sentences).sheet(scope.site(), found.where(),
                        found.period(), found.log())));
    }

    /** Writes the same of a site, or of a machine, into papers/, in place of an earlier one. */
    public Validated<WrittenPaper> write(String site, Optional<String> machine, AskedPeriod period,
            PaperOptions options) {
        return record(site, machine, period, options).then(record -> new PaperWriter(book)
                .write(record, "refrigerant-" + site + machine.map(id -> "-" + id).orElse(""), options.extras())
                .map(files -> WrittenPaper.of(files, record, record.customer(), List.of())));
    }

    /** The same, to look at. */
    public Validated<Pdf> pdf(String site, Optional<String> machine, AskedPeriod period, PaperOptions options) {
        return record(site, machine, period, options)
                .then(record -> new PaperWriter(book).printed(record, "", new Extras(false, false, true), Map.of()))
                .map(files -> Pdf.of(files.values().iterator().next()));
    }

    private Validated<RefrigerantRecord> record(String site, Optional<String> machine, AskedPeriod period,
            PaperOptions options) {
        return found(new Scope(Optional.of(site), machine, period), (shop, found) -> {
            Problems problems = new Problems();
            Optional<Site> where = shop.site(site, Place.NOWHERE);
            Optional<Shop> known = shop.shop();
            problems.addAll(shop.problems());
            return problems.or(() -> record(found, where.orElseThrow(), known.orElseThrow(), options));
        });
    }

    private static RefrigerantRecord record(Found found, Site site, Shop shop, PaperOptions options) {
        return new RefrigerantRecord(options.date(), shop,
                options.language().or(() -> site.customer().language()).orElse(shop.language()), shop.paper(),
                site.customer().name(), Where.of(site), found.period().from(), found.period().until(),
                found.log().machines().stream().map(machine -> machine(found, site, machine)).toList(),
                found.log().kinds());
    }

    private static OfMachine machine(Found found, Site site, Standing machine) {
        String id = machine.last().machine();
        return new OfMachine(site.machine(id).orElseThrow(),
                found.log().entries().stream().filter(entry -> entry.handled().machine().equals(id)).toList(), machine);
    }

    private <T> Validated<T> found(Scope scope, BiFunction<ShopFolder, Found, Validated<T>> told) {
        return scope.period().period().then(period -> book.together(held -> {
            ShopFolder shop = BookForms.shop(held);
            return held.read(open -> VisitScope.of(open, scope.site(), Optional.empty(), scope.machine())
                    .map(where -> found(open, shop, where, period))).then(found -> told.apply(shop, found));
        }));
    }

    /** Balances of cylinders, and what was lost before the first day, are of all visits, whichever are asked for. */
    private static Found found(Reading open, ShopFolder shop, VisitScope where, Period period) {
        HandledVisits visits = new HandledVisits(shop);
        List<Handled> all = visits.of(open);
        List<Handled> shown = all.stream().filter(one -> where.contains(one.site())
                && where.machine().filter(machine -> !machine.equals(one.machine())).isEmpty()
                && period.from().filter(one.day()::isBefore).isEmpty()
                && period.until().filter(one.day()::isAfter).isEmpty()).toList();
        return new Found(visits, where, period, RefrigerantLog.of(all, shown,
                shop.schedule().map(RateSchedule::refrigerants).orElse(RefrigerantRules.NONE)));
    }
}

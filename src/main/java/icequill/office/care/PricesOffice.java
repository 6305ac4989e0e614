package icequill.office.care;

import icequill.answer.rates.DayPrices;
import icequill.files.yaml.EntryComments;
import icequill.party.Language;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.render.words.Sentences;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.tax.TaxPlace;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The office that tells what is charged. */
public final class PricesOffice {

    private final ShopBook book;

    private PricesOffice(ShopBook book) {
        this.book = book;
    }

    public static PricesOffice of(ShopBook book) {
        return new PricesOffice(book);
    }

    /**
     * What is charged on a day.
     *
     * @param site by id, where the prices for one are asked for; then the taxes of its place are told too
     * @param language of the reader; empty for the shop's
     */
    public Validated<DayPrices> on(LocalDate day, Optional<String> site, Optional<Language> language) {
        ShopFolder shop = BookForms.shop(book);
        Problems problems = new Problems();
        return HistoryOffice.sentences(shop, language).then(sentences -> {
            Optional<Site> where = site.flatMap(id -> shop.site(id, Place.NOWHERE));
            Optional<DayPrices> prices = site.isPresent() && where.isEmpty()
                    ? Optional.empty()
                    : shop.schedule().flatMap(schedule -> problems.take(schedule.asOf(day, where)))
                            .map(rates -> new DayPrices(day, site, prices(shop, rates, where, day, sentences)));
            problems.addAll(shop.problems());
            return problems.or(prices::orElseThrow);
        });
    }

    private List<DayPrices.Price> prices(ShopFolder shop, Rates rates, Optional<Site> site, LocalDate day,
            Sentences sentences) {
        List<TaxPlace> places = shop.taxes().flatMap(rules -> rules.places().at(day)).orElse(List.of()).stream()
                .filter(place -> site.isEmpty() || site.flatMap(Site::taxPlace).filter(place.id()::equals).isPresent())
                .toList();
        EntryComments comments = new EntryComments(book.ratesInUse().folder());
        return new ChargedPrices(rates, places, comments, sentences).all();
    }
}

package icequill.shop;

import icequill.files.form.FormKind;
import icequill.files.pricing.PricingReader;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.party.Sourcing;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.rates.Rates;
import icequill.tax.TaxPlace;
import icequill.work.Sale;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.Optional;

/**
 * By which place's rules what is done at a site is taxed.
 *
 * @param texts by which it is told where a place without rules is named
 */
record TaxPlaces(ShopSettings settings, FormFinder finder, ShopTexts texts) {

    private static final String TAX_PLACE = "taxPlace";

    /**
     * The tax rules of a site, or of the shop where it is set so.
     *
     * @param beyond that there are none for its place is added here
     */
    Optional<TaxPlace> at(Site site, LocalDate day, Problems beyond) {
        return at(site, day, false, beyond);
    }

    /** The same of a visit, and of a sale those where it was handed over: what is fetched is fetched at the shop. */
    Optional<TaxPlace> at(Visit visit, Site site, Problems beyond) {
        boolean isFetched = visit.sale().filter(sale -> sale.way() == Sale.Way.FETCHED).isPresent();
        return at(site, visit.day(), isFetched, beyond);
    }

    private Optional<TaxPlace> at(Site site, LocalDate day, boolean isFetched, Problems beyond) {
        Shop own = settings.shop().orElseThrow();
        boolean atShop = isFetched || own.sourcing() == Sourcing.SHOP;
        Place asked = atShop
                ? texts.place(ShopSettings.SHOP, TAX_PLACE)
                : finder.given(FormKind.SITE, site.id())
                        .map(form -> texts.place(form.tree().place().file(), TAX_PLACE))
                        .orElse(Place.ofFile("the book's site " + site.id()));
        return settings.pricing().flatMap(PricingReader.Pricing::taxes).flatMap(
                rules -> beyond.take(rules.at(day, atShop ? own.taxPlace() : site.taxPlace(), asked)));
    }

    /** Prices as they are shown at a place: with its tax, where it has it so. */
    Rates shown(Rates prices, Optional<TaxPlace> place) {
        return settings.shop().flatMap(own -> place.map(found -> found.shown(prices, own.taxBasis()))).orElse(prices);
    }
}

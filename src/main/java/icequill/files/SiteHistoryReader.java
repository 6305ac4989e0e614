package icequill.files;

import icequill.money.Amounts;
import icequill.party.Shop;
import icequill.rates.ForecastRates;
import icequill.rates.Origin;
import icequill.rates.OwnCosts;
import icequill.rates.SiteHistory;
import icequill.work.Visit;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes what is known of a site for a forecast from the part "forecast" of a request. */
final class SiteHistoryReader {

    private SiteHistoryReader() {
    }

    /** Nothing is known where the request does not say. */
    static SiteHistory read(Fields request, Shop shop) {
        return request.child("forecast")
                .map(fields -> new SiteHistory(
                        fields.children("machines").stream().flatMap(entry -> entry.id("machine")
                                .map(id -> new SiteHistory.Care(new Visit.Named(id, entry.place("machine")),
                                        entry.day("lastCleaned"), entry.day("lastBrushed"),
                                        entry.number("nameplate")))
                                .stream()).toList(),
                        fields.integer("visits").filter(visits -> visits >= 0),
                        fields.child("assume").map(entry -> assumed(entry, shop.currency()))
                                .orElse(ForecastRates.Assumed.NOTHING),
                        fields.child("ownCosts").map(entry -> ownCosts(entry, shop.currency()))))
                .orElse(SiteHistory.UNKNOWN);
    }

    /** What is left out costs nothing. */
    private static OwnCosts ownCosts(Fields entry, CurrencyUnit currency) {
        return new OwnCosts(cost(entry, "iceBought", currency), cost(entry, "spoiledTrade", currency),
                cost(entry, "emergencyPremium", currency), cost(entry, "secondTrip", currency));
    }

    private static MonetaryAmount cost(Fields entry, String key, CurrencyUnit currency) {
        return Prices.charged(entry, key, currency).orElseGet(() -> Amounts.zero(currency));
    }

    private static ForecastRates.Assumed assumed(Fields entry, CurrencyUnit currency) {
        Origin told = Origin.CUSTOMER;
        return new ForecastRates.Assumed(Guesses.guess(entry, "randomFaults", Origin.ESTIMATE),
                Guesses.dirt(entry, "condenser", Origin.ESTIMATE), Guesses.dirt(entry, "water", Origin.ESTIMATE),
                Guesses.guess(entry, "iceUsed", told), Guesses.price(entry, "electricity", currency, told),
                Guesses.bag(entry, currency, told), Guesses.price(entry, "newMachine", currency, told),
                Guesses.lives(entry, told));
    }
}

package icequill.files.form;

import icequill.files.pricing.EstimateReader;
import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.Origin;
import icequill.forecast.inputs.OwnCosts;
import icequill.forecast.inputs.SiteHistory;
import icequill.money.Amounts;
import icequill.party.Shop;
import icequill.work.Visit;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes what is known of a site for a forecast from the part "forecast" of a request. */
public final class SiteHistoryReader {

    private SiteHistoryReader() {
    }

    /** Nothing is known where the request does not say. */
    public static SiteHistory read(Fields request, Shop shop) {
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
                        fields.child("ownCosts").map(entry -> ownCosts(entry, shop.currency())), Optional.empty()))
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
        return new ForecastRates.Assumed(EstimateReader.guess(entry, "randomFaults", Origin.ESTIMATE),
                EstimateReader.dirt(entry, "condenser", Origin.ESTIMATE),
                EstimateReader.dirt(entry, "water", Origin.ESTIMATE),
                EstimateReader.guess(entry, "iceUsed", told),
                EstimateReader.price(entry, "electricity", currency, told),
                EstimateReader.bag(entry, currency, told), EstimateReader.price(entry, "newMachine", currency, told),
                EstimateReader.lives(entry, told));
    }
}

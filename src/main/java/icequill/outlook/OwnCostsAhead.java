package icequill.outlook;

import icequill.document.Outlook.Beside;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.Forecast;
import icequill.forecast.inputs.OwnCosts;
import icequill.money.MinorUnits;
import java.math.BigDecimal;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** Figures what stops cost a customer by his own figures, beside the cash and apart from it. */
public record OwnCostsAhead(SiteForecast forecast) {

    /** What one stop costs him besides what the shop charges; empty where he did not say. */
    public Optional<MonetaryAmount> aStop() {
        return costs().map(this::aStop);
    }

    /** What stops of the first year may be expected to cost him besides. */
    public Optional<MonetaryAmount> ofFirstYear(CareOption way) {
        return aStop().map(stop -> forecast.amount(calls(way) * MinorUnits.of(stop)));
    }

    /** The first year in all, and what its stops cost him besides. */
    public Optional<MonetaryAmount> firstYear(CareOption way) {
        Forecast first = forecast.forecast(way, 1);
        return aStop().map(stop -> forecast.amount(first.total().mean() + calls(way) * MinorUnits.of(stop)));
    }

    private MonetaryAmount aStop(OwnCosts own) {
        return own.aStop(hours()).amount(forecast.currency());
    }

    private double calls(CareOption way) {
        return forecast.forecast(way, 1).calls().mean();
    }

    Optional<Beside> row() {
        return costs().map(own -> new Beside(Phrase.of("outlook.beside.own"),
                Phrase.of("outlook.beside.own-a-stop", new Fact.Measure(hours(), "h"), new Fact.Amount(aStop(own)),
                        new Fact.Amount(own.iceBought()), new Fact.Amount(own.spoiledTrade()),
                        new Fact.Amount(own.emergencyPremium()), new Fact.Amount(own.secondTrip())),
                Phrase.of("outlook.mark.own")));
    }

    private Optional<OwnCosts> costs() {
        return forecast.hand().history().ownCosts();
    }

    private BigDecimal hours() {
        return forecast.rates().beside().hoursDown();
    }
}

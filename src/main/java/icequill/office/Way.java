package icequill.office;

import icequill.document.WayOfCare;
import icequill.forecast.Care;
import icequill.forecast.Choice;
import icequill.forecast.MinorUnits;
import icequill.money.Percent;
import icequill.party.Wording;
import icequill.rates.ForecastRates;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A way of having a site's machines looked after.
 *
 * @param key by which programs know it
 * @param planned price of a year; zero where nothing is planned
 * @param cleaned months from one full cleaning to the next; empty for none
 * @param brushed months from one brushing of ours to the next; empty for none
 * @param plan whose visits these are; empty where nothing is planned
 */
record Way(String key, WayOfCare kind, Optional<Wording> name, MonetaryAmount planned, Optional<Integer> cleaned,
        Optional<Integer> brushed, ExpectedCharges.Charges charges, Optional<PricedPlan> plan) {

    private static final double HUNDRED = 100;

    /** As the forecast takes it. */
    Choice choice(ForecastRates rates) {
        return new Choice(MinorUnits.of(planned), care(cleaned, rates.cleaningRestores()),
                care(brushed, rates.brushingRestores()), charges.table());
    }

    private static Care care(Optional<Integer> months, Percent restores) {
        return months.map(interval -> new Care(interval, restores.value().doubleValue() / HUNDRED))
                .orElse(Care.NEVER);
    }
}

package icequill.shop;

import icequill.forecast.inputs.ForecastRates;
import icequill.outlook.LookAhead;
import icequill.outlook.SiteForecast;
import icequill.plans.PlanContext;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.Optional;

/** Reads what a shop forecasts by, and looks ahead from a priced request. */
public record ForecastLoader(ShopFolder folder) {

    /** Empty where the shop has nothing to forecast by; then nothing can be asked of a forecast either. */
    public Validated<Optional<SiteForecast>> of(PlanContext hand, LocalDate day, LookAhead asked) {
        Optional<ForecastRates> rates = folder.forecast(day);
        if (rates.isEmpty()) {
            return asked.equals(LookAhead.USUAL)
                    ? Validated.valid(Optional.empty())
                    : Validated.invalid(noRates(day));
        }
        return asked.checked().then(valid -> SiteForecast.of(hand, rates.get(), folder.energy(), day, valid))
                .map(Optional::of);
    }

    /** That nothing can be forecast for a day. */
    public static Problem noRates(LocalDate day) {
        return new Problem(Code.NO_RATES, Place.ofFile("pricing"), "no forecast rates cover " + day,
                "a file of kind forecast");
    }
}

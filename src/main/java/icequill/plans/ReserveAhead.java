package icequill.plans;

import icequill.forecast.Cause;
import icequill.forecast.Decimals;
import icequill.forecast.Forecast;
import icequill.forecast.MaintenancePolicy;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.SiteHistory;
import icequill.forecast.stops.CountDistribution;
import icequill.money.Amounts;
import icequill.money.MinorUnits;
import icequill.money.Rounding;
import icequill.party.Machine;
import icequill.pricer.CallReserve;
import icequill.problem.Validated;
import icequill.request.Survey;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a forecast expects of the calls that a plan includes, in its first year, or its term where that is shorter.
 *
 * @param expected by the shop, for any site
 * @param day whose prices of calls hold
 */
public record ReserveAhead(ForecastRates expected, SiteHistory history, Optional<Survey> survey, LocalDate day) {

    private static final int YEAR = 12;
    /** Of calls expected, so that the owner can read them; the price is by what she reads. */
    private static final int DECIMALS = 6;

    /** The calls under a plan's own care, charged with its discounts, or what is wrong with what the forecast goes by. */
    Validated<CallReserve> of(PricedPlan plan) {
        PlanSetting setting = plan.setting();
        ForecastRates rates = expected.with(history.assumed());
        SiteRisks risks = new SiteRisks(setting.site(), rates, history, survey, day, plan.term().start());
        ExpectedCharges prices = new ExpectedCharges(setting.shop(), setting.site(), setting.rates(), rates, day);
        return risks.checked(setting.whole().machines().stream().map(Machine::id).toList(), YEAR)
                .then(valid -> prices.charges(Optional.of(plan.tier())))
                .map(charges -> reserve(plan, charges, forecast(plan, rates, risks, charges)));
    }

    private static Forecast forecast(PricedPlan plan, ForecastRates rates, SiteRisks risks,
            ExpectedCharges.Charges charges) {
        CareOfSides care = CareOfSides.of(plan, rates);
        return Forecast.of(risks.machines(),
                new MaintenancePolicy(0, List.of(), 0, care.water(), care.condenser(), charges.table()), risks.policy(),
                Math.min(YEAR, plan.term().months()));
    }

    private static CallReserve reserve(PricedPlan plan, ExpectedCharges.Charges charges, Forecast forecast) {
        CurrencyUnit currency = plan.setting().rates().currency();
        CountDistribution calls = forecast.calls();
        double number = calls.mean();
        double charge = number > 0 ? forecast.charges().mean() / number : 0;
        double cost = number > 0
                ? Stream.of(Cause.values())
                        .mapToDouble(cause -> forecast.calls(cause).mean() * charges.meanCost(cause)).sum() / number
                : 0;
        return new CallReserve(
                Rounding.halfUp(BigFraction.from(calls.meanUpTo(plan.tier().included().number())), DECIMALS),
                MinorUnits.amount(Decimals.minorUnits(charge), currency),
                Amounts.of(Rounding.COST.round(BigFraction.from(cost), currency), currency));
    }
}

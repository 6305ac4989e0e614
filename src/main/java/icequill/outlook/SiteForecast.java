package icequill.outlook;

import icequill.document.CareOptionKind;
import icequill.forecast.Decimals;
import icequill.forecast.Forecast;
import icequill.forecast.Forecasts;
import icequill.forecast.PolicyComparison;
import icequill.forecast.PriceTerms;
import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.effects.EnergyLimits;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.stops.MachineRisk;
import icequill.money.MinorUnits;
import icequill.money.Stepping;
import icequill.party.Site;
import icequill.plans.PlanContext;
import icequill.plans.PricedPlan;
import icequill.plans.SiteRisks;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What the machines of a site may cost under each way of having them looked after.
 *
 * @param rates with what is assumed for the site
 * @param limits of energy that are on record
 * @param ways paying per call first
 * @param years that the comparison looks ahead
 * @param known forecasts made so far
 */
public record SiteForecast(PlanContext hand, ForecastRates rates, EnergyLimits limits, SiteRisks risks,
        List<CareOption> ways,
        int years, Forecasts known) {

    private static final int MONTHS = 12;
    /** Years that the owner's page and the data look ahead at least. */
    private static final int FEWEST_YEARS = 5;

    private SiteForecast(PlanContext hand, ForecastRates rates, EnergyLimits limits, SiteRisks risks,
            List<CareOption> ways,
            int years) {
        this(hand, rates, limits, risks, ways, years, new Forecasts());
    }

    /** The forecast, or what is wrong with what it goes by. */
    public static Validated<SiteForecast> of(PlanContext hand, ForecastRates expected, EnergyLimits limits,
            LocalDate day,
            LookAhead asked) {
        Site site = hand.setting().site();
        ForecastRates rates = expected.at(site.kind()).with(hand.history().assumed());
        SiteRisks risks = new SiteRisks(site, rates, hand.history(), hand.request().survey(), day,
                hand.request().scope().term().start());
        int years = asked.years().orElse(rates.years());
        return risks
                .checked(hand.setting().whole().machines().stream().map(machine -> machine.id()).toList(),
                        (double) MONTHS * Math.max(FEWEST_YEARS, years))
                .then(valid -> new CareOptions(hand, rates, day, asked.interval()).all())
                .map(ways -> new SiteForecast(hand, rates, limits, risks, ways, years));
    }

    /** The same by other rates, with its ways priced anew. */
    SiteForecast with(ForecastRates other) {
        return new SiteForecast(hand, other, limits, risks.with(other),
                new CareOptions(hand, other, risks.day(), Optional.empty()).all().orElseThrow(), years);
    }

    public Forecast forecast(CareOption way, int over) {
        return forecast(way, risks.machines(), over);
    }

    public Forecast forecast(CareOption way, List<MachineRisk> machines, int over) {
        return known.of(machines, way.choice(), risks.policy(), (double) MONTHS * over, terms());
    }

    private PriceTerms terms() {
        return new PriceTerms(rates.later().prices(), rates.later().money());
    }

    /** What a way saves in the first year beside paying per call. */
    PolicyComparison comparison(CareOption way, List<MachineRisk> machines) {
        return new PolicyComparison(machines, way.choice(), payPerCall().choice(), risks.policy(), MONTHS,
                PriceTerms.NONE);
    }

    public CareOption payPerCall() {
        return ways.getFirst();
    }

    /** The plan that cleans as often as recommended, or the nearest to it. */
    CareOption recommended() {
        PricedPlan yardstick = hand.choices().yardstick();
        return ways.stream().filter(way -> way.kind() == CareOptionKind.AGREEMENT)
                .filter(way -> way.plan().filter(yardstick::equals).isPresent()).findFirst().orElseThrow();
    }

    /** The cleanings of a plan, each ordered by itself: the fair rival of an agreement. */
    public CareOption bookedSingly() {
        return ways.stream().filter(way -> way.kind() == CareOptionKind.BOOKED_SINGLY).findFirst().orElseThrow();
    }

    /** The chance that a way costs less in all than a rival; empty beside itself. */
    public Optional<Double> chanceCheaper(CareOption way, CareOption rival, int over) {
        return way.equals(rival)
                ? Optional.empty()
                : Optional.of(forecast(way, over).chanceCheaperThan(forecast(rival, over)));
    }

    /** What a call costs on average when nobody cleans, over a year; zero where there are none. */
    MonetaryAmount meanCall() {
        Forecast never = forecast(payPerCall(), 1);
        double calls = never.calls().mean();
        return amount(calls > 0 ? never.charges().mean() / calls : 0);
    }

    public CurrencyUnit currency() {
        return hand.setting().rates().currency();
    }

    /** A mean or spread of minor units, rounded once. */
    public MonetaryAmount amount(double minor) {
        return amount(Decimals.minorUnits(minor));
    }

    public MonetaryAmount amount(long minor) {
        return MinorUnits.amount(minor, currency());
    }

    /** To the step that money is rounded to on a customer's sheet. */
    MonetaryAmount rounded(MonetaryAmount amount) {
        return Stepping.NEAREST.of(amount, rates.roundTo());
    }

    public MonetaryAmount quantile(MixedDistribution law, double chance) {
        return amount(law.quantile(chance));
    }
}

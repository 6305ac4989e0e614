package icequill.office;

import icequill.document.WayOfCare;
import icequill.forecast.EnergyLimits;
import icequill.forecast.Forecast;
import icequill.forecast.Forecasts;
import icequill.forecast.MachineRisk;
import icequill.forecast.MinorUnits;
import icequill.forecast.MixedLaw;
import icequill.forecast.PriceTerms;
import icequill.forecast.Question;
import icequill.money.Stepping;
import icequill.party.Site;
import icequill.problem.Checked;
import icequill.rates.ForecastRates;
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
record SiteForecast(PlanInHand hand, ForecastRates rates, EnergyLimits limits, SiteRisks risks, List<Way> ways,
        int years, Forecasts known) {

    private static final int MONTHS = 12;
    /** Years that the owner's page and the data look ahead at least. */
    private static final int FEWEST_YEARS = 5;

    private SiteForecast(PlanInHand hand, ForecastRates rates, EnergyLimits limits, SiteRisks risks, List<Way> ways,
            int years) {
        this(hand, rates, limits, risks, ways, years, new Forecasts());
    }

    /** The forecast, or what is wrong with what it goes by. */
    static Checked<SiteForecast> of(PlanInHand hand, ForecastRates expected, EnergyLimits limits, LocalDate day,
            LookAhead asked) {
        Site site = hand.setting().site();
        ForecastRates rates = expected.at(site.kind()).with(hand.history().assumed());
        SiteRisks risks = new SiteRisks(site, rates, hand.history(), hand.request().survey(), day,
                hand.request().scope().term().start());
        int years = asked.years().orElse(rates.years());
        return risks
                .checked(hand.setting().whole().machines().stream().map(machine -> machine.id()).toList(),
                        (double) MONTHS * Math.max(FEWEST_YEARS, years))
                .then(sound -> new Ways(hand, rates, day, asked.interval()).all())
                .map(ways -> new SiteForecast(hand, rates, limits, risks, ways, years));
    }

    /** The same by other rates, with its ways priced anew. */
    SiteForecast with(ForecastRates other) {
        return new SiteForecast(hand, other, limits, risks.with(other),
                new Ways(hand, other, risks.day(), Optional.empty()).all().orElseThrow(), years);
    }

    Forecast forecast(Way way, int over) {
        return forecast(way, risks.machines(), over);
    }

    Forecast forecast(Way way, List<MachineRisk> machines, int over) {
        return known.of(machines, way.choice(), risks.policy(), (double) MONTHS * over, terms());
    }

    private PriceTerms terms() {
        return new PriceTerms(rates.later().prices(), rates.later().money());
    }

    /** What a way saves in the first year beside paying per call. */
    Question question(Way way, List<MachineRisk> machines) {
        return new Question(machines, way.choice(), payPerCall().choice(), risks.policy(), MONTHS,
                PriceTerms.NONE);
    }

    Way payPerCall() {
        return ways.getFirst();
    }

    /** The plan that cleans as often as recommended, or the nearest to it. */
    Way recommended() {
        PricedPlan yardstick = hand.choices().yardstick();
        return ways.stream().filter(way -> way.kind() == WayOfCare.AGREEMENT)
                .filter(way -> way.plan().filter(yardstick::equals).isPresent()).findFirst().orElseThrow();
    }

    /** The cleanings of a plan, each ordered by itself: the fair rival of an agreement. */
    Way bookedSingly() {
        return ways.stream().filter(way -> way.kind() == WayOfCare.BOOKED_SINGLY).findFirst().orElseThrow();
    }

    /** The chance that a way costs less in all than a rival; empty beside itself. */
    Optional<Double> chanceCheaper(Way way, Way rival, int over) {
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

    CurrencyUnit currency() {
        return hand.setting().rates().currency();
    }

    /** A mean or spread of minor units, rounded once. */
    MonetaryAmount amount(double minor) {
        return amount(MinorUnits.expected(minor));
    }

    MonetaryAmount amount(long minor) {
        return MinorUnits.amount(minor, currency());
    }

    /** To the step that money is rounded to on a customer's sheet. */
    MonetaryAmount rounded(MonetaryAmount amount) {
        return Stepping.NEAREST.of(amount, rates.roundTo());
    }

    MonetaryAmount quantile(MixedLaw law, double chance) {
        return amount(law.quantile(chance));
    }
}

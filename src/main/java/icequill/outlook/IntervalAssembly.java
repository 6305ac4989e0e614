package icequill.outlook;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.BestInterval;
import icequill.forecast.Cause;
import icequill.forecast.Decimals;
import icequill.forecast.IntervalCosts;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.money.MinorUnits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says how many months between cleanings are cheapest for the machines of a site. */
record IntervalAssembly(SiteForecast forecast) {

    /** The cheapest interval, and how it stands to the one that hygiene allows. */
    List<Phrase> said() {
        int cap = forecast.hand().choices().interval().months();
        BestInterval best = costs().best(cap);
        List<Phrase> said = new ArrayList<>();
        said.add(best.months()
                .map(months -> Phrase.of("mine.best", new Fact.Measure(tenths(months), "month"),
                        money(best.aYear())))
                .orElseGet(() -> Phrase.of("mine.no-best", money(best.aYear()))));
        said.add(best.isCapped()
                ? Phrase.of("mine.capped", Fact.number(cap, "month"), money(best.aYearAtCap()),
                        money(best.hygiene()))
                : Phrase.of("mine.not-capped", Fact.number(cap, "month"), money(best.aYearAtCap())));
        if (!forecast.risks().season().isWholeYear()) {
            said.add(Phrase.of("mine.running", Fact.number(forecast.risks().season().aYear(), "month")));
        }
        return said;
    }

    /** Of cleanings at the mean list price and the calls that dirt brings. */
    private IntervalCosts costs() {
        CareOption never = forecast.payPerCall();
        long cleaning = Math.max(1, MinorUnits.of(
                new CareOptions(forecast.hand(), forecast.rates(), forecast.risks().day(), Optional.empty())
                        .cleaning()));
        List<IntervalCosts.Side> sides = new ArrayList<>();
        for (MachineRisk machine : forecast.risks().machines()) {
            machine.condenser().ifPresent(clock -> sides.add(side(clock, never, Cause.CONDENSER)));
            sides.add(side(machine.water(), never, Cause.WATER));
        }
        return cleans() > 0 ? IntervalCosts.resets(cleaning, sides) : IntervalCosts.restarts(cleaning, sides);
    }

    /**
     * A side whose calls only restart in part is one by a slower clock all of whose calls clean; each of these stands for all calls up
     * to it.
     */
    private IntervalCosts.Side side(FoulingLife clock, CareOption way, Cause cause) {
        double charge = way.charges().meanCharge(cause);
        return cleans() > 0
                ? new IntervalCosts.Side(clock.faster(Math.pow(cleans(), 1 / clock.shape())),
                        Decimals.minorUnits(charge / cleans()))
                : new IntervalCosts.Side(clock, Decimals.minorUnits(charge));
    }

    private double cleans() {
        return forecast.risks().policy().cleans();
    }

    private Fact money(long minor) {
        return new Fact.Amount(forecast.amount(minor));
    }

    private static BigDecimal tenths(double months) {
        return Decimals.of(months, 1);
    }
}

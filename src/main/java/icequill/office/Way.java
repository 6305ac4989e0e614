package icequill.office;

import icequill.agreement.Scope;
import icequill.document.WayOfCare;
import icequill.forecast.Care;
import icequill.forecast.Choice;
import icequill.forecast.MinorUnits;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.Wording;
import icequill.rates.ForecastRates;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * A way of having a site's machines looked after.
 *
 * @param key by which programs know it
 * @param planned price of the first year, without catching up; zero where nothing is planned
 * @param later prices of the years after it, one after another and nothing beyond; empty where each year costs the same
 * @param catchUp of neglected machines on the first visit
 * @param care the real calendar of its cleanings and brushings
 * @param charges what its calls cost
 * @param included calls of a year that its price includes
 * @param plan whose visits these are; empty where nothing is planned
 */
record Way(String key, WayOfCare kind, Optional<Wording> name, MonetaryAmount planned,
        Optional<List<MonetaryAmount>> later, CatchUp catchUp, CareOfSides care,
        ExpectedCharges.Charges charges, int included, Optional<PricedPlan> plan) {

    /**
     * What catching up adds to the first visit.
     *
     * @param price zero where nothing is planned, or nothing is neglected
     * @param cost of it to the shop; never shown to a customer
     */
    record CatchUp(MonetaryAmount price, MonetaryAmount cost) {

        static CatchUp none(CurrencyUnit currency) {
            return new CatchUp(Amounts.zero(currency), Amounts.zero(currency));
        }
    }

    /**
     * How often a way looks after machines.
     *
     * @param cleaned most months from one full cleaning to the next; empty for none
     * @param brushed most months from one brushing of ours to the next; empty for none
     */
    record CareOfSides(Optional<Integer> cleaned, Optional<Integer> brushed, Care water, Care condenser) {

        private static final double HUNDRED = 100;

        static final CareOfSides NONE = new CareOfSides(Optional.empty(), Optional.empty(), Care.NEVER, Care.NEVER);

        /** By the real calendar of a plan's first year. */
        static CareOfSides of(PricedPlan plan, ForecastRates rates) {
            Predicate<Scope> brushes = scope -> scope.tasks().containsAll(rates.calls().condenser().resets());
            Calendars calendars = new Calendars(new OpenMonths(plan.setting().site().season()), plan.term().start());
            return new CareOfSides(plan.tier().monthsBetweenFullCleans(), plan.tier().monthsBetween(brushes),
                    calendars.of(plan, Scope::isFullClean, part(rates.cleaningRestores())),
                    calendars.of(plan, brushes, part(rates.brushingRestores())));
        }

        static double part(Percent percent) {
            return percent.value().doubleValue() / HUNDRED;
        }
    }

    /** What is paid in the first year whatever happens. */
    MonetaryAmount firstYear() {
        return planned.add(catchUp.price());
    }

    /** As the forecast takes it. */
    Choice choice() {
        List<Long> besides = new ArrayList<>();
        besides.add(MinorUnits.of(later.isPresent() ? firstYear() : catchUp.price()));
        later.ifPresent(years -> years.forEach(price -> besides.add(MinorUnits.of(price))));
        return new Choice(later.isPresent() ? 0 : MinorUnits.of(planned), besides, included, care.water(),
                care.condenser(), charges.table());
    }
}

package icequill.office;

import icequill.agreement.Scope;
import icequill.forecast.Care;
import icequill.money.Percent;
import icequill.rates.ForecastRates;
import java.util.Optional;
import java.util.function.Predicate;

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

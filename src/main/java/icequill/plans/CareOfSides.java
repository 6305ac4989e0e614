package icequill.plans;

import icequill.agreement.Scope;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.stops.CleaningSchedule;
import icequill.money.Percent;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * How often a way looks after machines.
 *
 * @param cleaned most months from one full cleaning to the next; empty for none
 * @param brushed most months from one brushing of ours to the next; empty for none
 */
public record CareOfSides(Optional<Integer> cleaned, Optional<Integer> brushed, CleaningSchedule water,
        CleaningSchedule condenser) {

    private static final double HUNDRED = 100;

    public static final CareOfSides NONE = new CareOfSides(Optional.empty(), Optional.empty(), CleaningSchedule.NEVER,
            CleaningSchedule.NEVER);

    /** By the real calendar of a plan's first year. */
    public static CareOfSides of(PricedPlan plan, ForecastRates rates) {
        Predicate<Scope> brushes = scope -> scope.tasks().containsAll(rates.calls().condenser().resets());
        Calendars calendars = new Calendars(new OpenMonths(plan.setting().site().season()), plan.term().start());
        return new CareOfSides(plan.tier().monthsBetweenFullCleans(), plan.tier().monthsBetween(brushes),
                calendars.of(plan, Scope::isFullClean, part(rates.cleaningRestores())),
                calendars.of(plan, brushes, part(rates.brushingRestores())));
    }

    public static double part(Percent percent) {
        return percent.value().doubleValue() / HUNDRED;
    }
}

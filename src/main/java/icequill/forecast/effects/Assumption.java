package icequill.forecast.effects;

import icequill.forecast.CallKind;
import icequill.forecast.CallTable;
import icequill.forecast.Cause;
import icequill.forecast.Decimals;
import icequill.forecast.MaintenancePolicy;
import icequill.forecast.PolicyComparison;
import icequill.forecast.stops.MachineRisk;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** A figure that goes into a forecast and may be off. Each can be multiplied by a factor, with all others as they were. */
public enum Assumption {
    /** Random faults in a year. */
    RANDOM_FAULTS,
    /** How fast condensers get dirty. */
    CONDENSER_DIRT,
    /** How fast scale and slime build up. */
    WATER_DIRT,
    /** Months since machines were last cleaned and brushed. */
    MONTHS_RUN,
    /** What calls cost, of both choices. */
    CALL_CHARGES,
    /** What the first choice costs whatever happens. */
    PLANNED_PRICE;

    /**
     * The question with this figure multiplied; charges are rounded to whole minor units.
     *
     * @param factor above 0
     */
    public PolicyComparison times(double factor, PolicyComparison question) {
        return switch (this) {
        case RANDOM_FAULTS -> machines(question,
                machine -> new MachineRisk(machine.randomAYear() * factor, machine.condenser(),
                        machine.monthsSinceBrushed(), machine.water(), machine.monthsSinceCleaned(),
                        machine.seasons()));
        case CONDENSER_DIRT -> machines(question,
                machine -> new MachineRisk(machine.randomAYear(),
                        machine.condenser().map(clock -> clock.faster(factor)),
                        machine.monthsSinceBrushed(), machine.water(), machine.monthsSinceCleaned(),
                        machine.seasons()));
        case WATER_DIRT -> machines(question,
                machine -> new MachineRisk(machine.randomAYear(), machine.condenser(), machine.monthsSinceBrushed(),
                        machine.water().faster(factor), machine.monthsSinceCleaned(), machine.seasons()));
        case MONTHS_RUN -> machines(question,
                machine -> new MachineRisk(machine.randomAYear(), machine.condenser(),
                        machine.monthsSinceBrushed() * factor, machine.water(),
                        machine.monthsSinceCleaned() * factor, machine.seasons()));
        case CALL_CHARGES -> choices(question, dearerCalls(question.first(), factor),
                dearerCalls(question.second(), factor));
        case PLANNED_PRICE -> choices(question,
                question.first().priced(Decimals.minorUnits(question.first().planned() * factor),
                        question.first().calls()),
                question.second());
        };
    }

    private static PolicyComparison machines(PolicyComparison question, UnaryOperator<MachineRisk> changed) {
        return new PolicyComparison(question.machines().stream().map(changed).toList(), question.first(),
                question.second(),
                question.policy(), question.months(), question.terms());
    }

    private static PolicyComparison choices(PolicyComparison question, MaintenancePolicy first,
            MaintenancePolicy second) {
        return new PolicyComparison(question.machines(), first, second, question.policy(), question.months(),
                question.terms());
    }

    private static MaintenancePolicy dearerCalls(MaintenancePolicy choice, double factor) {
        Map<Cause, List<CallKind>> kinds = new EnumMap<>(Cause.class);
        choice.calls().kinds().forEach((cause, own) -> kinds.put(cause, own.stream()
                .map(kind -> new CallKind(kind.share(), Decimals.minorUnits(kind.charge() * factor))).toList()));
        return choice.priced(choice.planned(), new CallTable(kinds));
    }
}

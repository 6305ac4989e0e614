package icequill.forecast;

import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.RenewalSeries;
import icequill.forecast.stops.StopPolicy;
import icequill.forecast.stops.Stretches;
import icequill.problem.Check;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * How dirty a condenser is on average while its machine runs, with the brushings of its care and those of calls counted in. The
 * dirt of a year is supposed to gather evenly and then to stay as it is: after three months it is a quarter, after twelve and later
 * 1. Where a brushing of the calendar leaves some dirt, calls before it are taken to have left as much. Months
 * weigh as they count for its dirt.
 */
public final class MeanDirt {

    private static final double YEAR = 12;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(24, 0, 1);
    /** Parts of an integral, since dirt has a bend at the end of its first year. */
    private static final int PARTS = 4;

    private MeanDirt() {
    }

    /**
     * Of a machine that is cooled by air; 0 for any other.
     *
     * @param months of the horizon, above 0
     * @param care of the condenser
     */
    public static double of(MachineRisk machine, StopPolicy policy, double months, CleaningSchedule care) {
        Check.that(months > 0, "a horizon of " + months + " months");
        return machine.condenser().map(clock -> mean(clock, policy, machine.monthsSinceBrushed(),
                Stretches.of(care, machine.seasons().condenser(), months))).orElse(0.0);
    }

    private static double mean(FoulingLife clock, StopPolicy policy, double age, Stretches stretches) {
        double run = 0;
        double sum = 0;
        double begins = age;
        for (double length : stretches.lengths()) {
            sum += length == 0 ? 0 : between(clock, policy.cleans(), begins, length);
            run += length;
            begins = stretches.leaves() * (begins + length);
        }
        return run == 0 ? 0 : Math.clamp(sum / run, 0, 1);
    }

    /** Dirt times months until the next brushing of the calendar. */
    private static double between(FoulingLife clock, double cleans, double age, double months) {
        if (cleans == 0) {
            return integral(t -> dirt(age + t), months);
        }
        // Stops whose calls brush come by a slower clock of the same shape.
        FoulingLife brushed = clock.faster(Math.pow(cleans, 1 / clock.shape()));
        RenewalSeries series = RenewalSeries.of(brushed, months);
        // Not brushed yet, or brushed by the last such call a while ago.
        return integral(t -> dirt(age + t) * Math.exp(-brushed.hazard(age, t))
                + series.counts(age, t).mean() * dirt(months - t) * Math.exp(-brushed.hazard(months - t)), months);
    }

    private static double dirt(double months) {
        return Math.min(1, months / YEAR);
    }

    private static double integral(DoubleUnaryOperator value, double months) {
        double length = months / PARTS;
        double sum = 0;
        for (int i = 0; i < PARTS; i++) {
            double from = i * length;
            sum += length * RULE.integrate(part -> value.applyAsDouble(from + part * length));
        }
        return sum;
    }
}

package icequill.forecast.fit;

import icequill.forecast.stops.FoulingLife;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * How likely runs are under a clock, as a logarithm (NIST/SEMATECH e-Handbook 8.4.1.2 and 8.1.3.1: exact, right-censored and interval
 * times; what entered late counts from its age on).
 */
final class RunLikelihood {

    static final double LEAST_SHAPE = 0.02;
    static final double MOST_SHAPE = 100;
    private static final double EXACT = 1e-13;
    private static final int ORDER = 5;
    private static final int MOST_STEPS = 500;

    private final List<Run> runs;
    private final double longest;
    private final long stops;

    /** Of runs, at least one of which stopped. */
    RunLikelihood(List<Run> runs) {
        this.runs = runs;
        this.longest = runs.stream().mapToDouble(Run::atMost).max().orElseThrow();
        this.stops = runs.stream().filter(Run::stopped).count();
    }

    /** The logarithm. */
    double at(FoulingLife clock) {
        double sum = 0;
        for (Run run : runs) {
            double least = clock.hazard(run.atLeast());
            sum += run.entered() == 0 ? 0 : clock.hazard(run.entered());
            if (run.isBetween()) {
                sum += Math.log(-Math.expm1(least - clock.hazard(run.atMost()))) - least;
            } else {
                sum += (run.stopped() ? Math.log(clock.rate(run.atLeast())) : 0) - least;
            }
        }
        return sum;
    }

    /** What it grows by with the shape, at the same scale. */
    double slope(FoulingLife clock) {
        double sum = 0;
        for (Run run : runs) {
            double least = bend(clock, run.atLeast());
            sum += bend(clock, run.entered());
            if (run.isBetween()) {
                double growth = clock.hazard(run.atMost()) - clock.hazard(run.atLeast());
                sum += (bend(clock, run.atMost()) - least) / Math.expm1(growth) - least;
            } else {
                sum += (run.stopped() ? 1 / clock.shape() + Math.log(run.atLeast() / clock.scale()) : 0) - least;
            }
        }
        return sum;
    }

    /** How much likelier a steeper clock is, each with its likeliest scale. */
    double slope(double shape) {
        return slope(withShape(shape));
    }

    /** The likeliest clock. */
    FoulingLife likeliest() {
        return withShape(root(shape -> -slope(shape), LEAST_SHAPE, MOST_SHAPE));
    }

    /** What a cumulative hazard grows by with the shape. */
    private static double bend(FoulingLife clock, double months) {
        return months == 0 ? 0 : clock.hazard(months) * Math.log(months / clock.scale());
    }

    /**
     * The clock with the likeliest scale for a shape. In powers of a scale the logarithm bends down everywhere, so Newton's steps
     * lead to its top.
     */
    FoulingLife withShape(double shape) {
        // Months are taken as parts of the longest, so that no power overflows.
        double watched = 0;
        for (Run run : runs) {
            watched += power(run.months(), shape) - power(run.entered(), shape);
        }
        double intensity = stops / watched;
        for (int i = 0; i < MOST_STEPS; i++) {
            double next = intensity + step(shape, intensity);
            next = next > 0 ? next : intensity / 2;
            boolean found = Math.abs(next - intensity) <= EXACT * intensity;
            intensity = next;
            if (found) {
                break;
            }
        }
        return new FoulingLife(shape, longest * Math.pow(intensity, -1 / shape));
    }

    private double step(double shape, double intensity) {
        double slope = 0;
        double bend = 0;
        for (Run run : runs) {
            double least = power(run.atLeast(), shape);
            slope += power(run.entered(), shape) - least;
            if (run.isBetween()) {
                double growth = power(run.atMost(), shape) - least;
                double grown = Math.expm1(intensity * growth);
                slope += growth / grown;
                bend += growth * growth * (grown + 1) / (grown * grown);
            } else if (run.stopped()) {
                slope += 1 / intensity;
                bend += 1 / (intensity * intensity);
            }
        }
        return slope / bend;
    }

    private double power(double months, double shape) {
        return Math.pow(months / longest, shape);
    }

    /** The clock with the likeliest shape for a scale. */
    FoulingLife withScale(double scale) {
        return new FoulingLife(root(shape -> -slope(new FoulingLife(shape, scale)), LEAST_SHAPE, MOST_SHAPE), scale);
    }

    /** Where a rising function crosses 0, in a bracket above 0; the nearer end where it does not. */
    static double root(DoubleUnaryOperator rising, double from, double to) {
        if (rising.applyAsDouble(from) >= 0) {
            return from;
        }
        if (rising.applyAsDouble(to) <= 0) {
            return to;
        }
        return Math.exp(new BracketingNthOrderBrentSolver(EXACT, EXACT, ORDER).solve(MOST_STEPS,
                log -> bounded(rising.applyAsDouble(Math.exp(log))), Math.log(from), Math.log(to)));
    }

    /** Powers may overflow far from the root; the sign is what counts there. */
    private static double bounded(double value) {
        return Math.clamp(value, -Double.MAX_VALUE, Double.MAX_VALUE);
    }
}

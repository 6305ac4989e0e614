package icequill.forecast;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The likeliest shape of stops at given months, when so many months were watched. The same equation serves for runs that end with
 * their stop (Weibull) and for stretches that go on after stops (power law); its left side rises with the shape, so it is solved
 * within brackets.
 */
final class ShapeSearch {

    private static final double LEAST = 1e-3;
    private static final double MOST = 100;
    private static final double EXACT = 1e-13;
    private static final int ORDER = 5;
    private static final int MOST_STEPS = 500;

    private final double[] watched;
    private final double[] stops;
    private final double longest;

    /**
     * A search.
     *
     * @param watched months of every run or stretch, at least one
     * @param stops months at which something stopped
     */
    ShapeSearch(List<Double> watched, List<Double> stops) {
        this.watched = watched.stream().mapToDouble(Double::doubleValue).toArray();
        this.stops = stops.stream().mapToDouble(Double::doubleValue).toArray();
        this.longest = Arrays.stream(this.watched).max().orElseThrow();
    }

    /** Empty where all stops came at the end of the longest run, so that every steeper clock is likelier. */
    Optional<Double> shape() {
        return slope(MOST) <= 0 ? Optional.empty() : Optional.of(root(this::slope, LEAST, MOST));
    }

    /** The likeliest scale for a shape. */
    double scale(double shape) {
        double sum = 0;
        for (double months : watched) {
            sum += Math.pow(months / longest, shape);
        }
        return longest * Math.pow(sum / stops.length, 1 / shape);
    }

    /** Log likelihood. */
    double likelihood(double shape, double scale) {
        double sum = 0;
        for (double months : stops) {
            sum += Math.log(shape / scale) + (shape - 1) * Math.log(months / scale);
        }
        for (double months : watched) {
            sum -= Math.pow(months / scale, shape);
        }
        return sum;
    }

    /** The likeliest shape for a scale; the likelihood bends down everywhere along it. */
    double shapeFor(double scale) {
        return root(shape -> {
            double sum = -stops.length / shape;
            for (double months : watched) {
                sum += Math.pow(months / scale, shape) * Math.log(months / scale);
            }
            for (double months : stops) {
                sum -= Math.log(months / scale);
            }
            return sum;
        }, LEAST, MOST);
    }

    /** Below 0 where a steeper clock is likelier. Months are taken as parts of the longest, so that no power overflows. */
    private double slope(double shape) {
        double above = 0;
        double below = 0;
        for (double months : watched) {
            double power = Math.pow(months / longest, shape);
            above += power * Math.log(months / longest);
            below += power;
        }
        double logs = 0;
        for (double months : stops) {
            logs += Math.log(months / longest);
        }
        return above / below - 1 / shape - logs / stops.length;
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

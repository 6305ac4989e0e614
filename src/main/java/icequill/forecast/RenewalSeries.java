package icequill.forecast;

import icequill.problem.Check;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Counts the stops of a clock that each stop sets back to zero: a Weibull renewal process. The chance of at least n stops within t
 * months is a power series in the hazard z = (t / scale)^shape, so a Chebyshev interpolation in z holds it, and one matrix leads
 * from n - 1 stops to n: the integral of the density of the first stop times the chance of n - 1 more in what is left, by Gauss
 * rules that are dense at both ends. For shapes of 1.3 and more the chances are right to 1e-9; for smaller ones to about 1e-7.
 */
final class RenewalSeries {

    private static final double NEGLIGIBLE = 1e-16;
    private static final int MOST_STOPS = 400;
    private static final int FEWEST_NODES = 28;
    private static final double NODES_PER_ROOT = 6;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(48, 0, 1);
    /** Nodes of the rule are drawn to the ends of an interval by this power, where densities and chances begin like powers. */
    private static final int DRAW = 4;

    private final DirtClock clock;
    private final double most;
    private final double[] nodes;
    private final double[] weights;
    /** The chances of at least 1, 2, ... stops at each node. */
    private final List<double[]> atLeast = new ArrayList<>();

    /**
     * The series of a clock.
     *
     * @param most months that are asked for
     */
    RenewalSeries(DirtClock clock, double most) {
        Check.that(most > 0, "a series of " + most + " months");
        this.clock = clock;
        this.most = clock.hazard(most);
        int count = FEWEST_NODES + (int) (NODES_PER_ROOT * Math.sqrt(this.most));
        this.nodes = new double[count + 1];
        this.weights = new double[count + 1];
        for (int j = 0; j <= count; j++) {
            // The end points are exact, so that t = 0 and t = most are nodes.
            nodes[j] = this.most * (j == 0 ? 0 : j == count ? 1 : (1 - Math.cos(Math.PI * j / count)) / 2);
            weights[j] = (j % 2 == 0 ? 1 : -1) * (j == 0 || j == count ? 0.5 : 1);
        }
        fill();
    }

    private void fill() {
        double[][] step = step();
        double[] chances = new double[nodes.length];
        for (int j = 0; j < nodes.length; j++) {
            chances[j] = -Math.expm1(-nodes[j]);
        }
        while (chances[nodes.length - 1] > NEGLIGIBLE && atLeast.size() < MOST_STOPS) {
            atLeast.add(chances);
            double[] next = new double[nodes.length];
            for (int i = 1; i < nodes.length; i++) {
                double sum = 0;
                for (int j = 0; j < nodes.length; j++) {
                    sum += step[i][j] * chances[j];
                }
                next[i] = Math.clamp(sum, 0, chances[i]);
            }
            chances = next;
        }
    }

    private double[][] step() {
        double[][] step = new double[nodes.length][nodes.length];
        for (int i = 1; i < nodes.length; i++) {
            double[] row = step[i];
            convolve(0, clock.monthOf(nodes[i]), (density, left) -> spread(density, clock.hazard(left), row));
        }
        return step;
    }

    /** Receives the weighted density of a first stop, and the months that are left after it. */
    @FunctionalInterface
    private interface Part {
        void of(double density, double left);
    }

    /** All parts of the integral over the first stop of one that has an age. */
    private void convolve(double age, double months, Part part) {
        double half = months / 2;
        for (int q = 0; q < RULE.getNumberOfPoints(); q++) {
            double point = RULE.getPoint(q);
            double near = half * Math.pow(point, DRAW);
            double weight = RULE.getWeight(q) * half * DRAW * Math.pow(point, DRAW - 1);
            part.of(weight * clock.density(age, near), months - near);
            part.of(weight * clock.density(age, months - near), near);
        }
    }

    /** Adds an amount times the interpolation at a hazard to the row. */
    private void spread(double amount, double hazard, double[] row) {
        double sum = 0;
        for (int j = 0; j < nodes.length; j++) {
            if (hazard == nodes[j]) {
                row[j] += amount;
                return;
            }
            sum += weights[j] / (hazard - nodes[j]);
        }
        for (int j = 0; j < nodes.length; j++) {
            row[j] += amount * weights[j] / (hazard - nodes[j]) / sum;
        }
    }

    private double value(double[] chances, double[] row) {
        double sum = 0;
        for (int j = 0; j < row.length; j++) {
            sum += chances[j] * row[j];
        }
        return sum;
    }

    /**
     * The stops within some months of a machine that has run for its age without a stop.
     *
     * @param age months since the clock began
     * @param months up to the most of this series
     */
    Counts counts(double age, double months) {
        if (months <= 0) {
            return Counts.NONE;
        }
        double[] row = new double[nodes.length];
        if (age == 0) {
            spread(1, Math.min(clock.hazard(months), most), row);
        } else {
            convolve(age, months, (density, left) -> spread(density, clock.hazard(left), row));
        }
        List<Double> atLeastNow = new ArrayList<>(List.of(1.0));
        if (age > 0) {
            atLeastNow.add(-Math.expm1(clock.hazard(age) - clock.hazard(age + months)));
        }
        atLeast.forEach(chances -> atLeastNow.add(value(chances, row)));
        double[] chances = new double[atLeastNow.size()];
        double before = 1;
        for (int n = 0; n < chances.length; n++) {
            double next = n + 1 < chances.length ? Math.clamp(atLeastNow.get(n + 1), 0, before) : 0;
            chances[n] = before - next;
            before = next;
        }
        return Counts.of(chances);
    }
}

package icequill.forecast.stops;

import icequill.problem.Check;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Counts the stops of a clock that each stop sets back to zero: a Weibull renewal process. The chance of at least n stops within t
 * months is a power series in (t / scale)^shape, so a Chebyshev interpolation in (t / scale)^(shape / whole part of the shape) holds
 * it, and one matrix leads from n - 1 stops to n: the integral of the density of the first stop times the chance of n - 1 more in
 * what is left, by Gauss rules that are dense at both ends. For shapes from 1.3 to 10 and up to 40 scales the chances are right to
 * 1e-9; for smaller shapes to about 1e-7.
 */
public final class RenewalSeries {

    private static final double NEGLIGIBLE = 1e-16;
    private static final int MOST_STOPS = 400;
    /** Nodes for a horizon of so many scales: found by comparing with twice as many. */
    private static final int FEWEST_NODES = 20;
    private static final double NODES_PER_SCALE = 1.3;
    private static final double NODES_PER_SHAPE = 0.1;
    private static final double NODES_WHERE_STEEP = 6;
    private static final double STEEP_FROM = 2.6;
    private static final double STEEP_SCALES = 3;
    /** Beyond this hazard hardly any first stop is left. */
    private static final double LAST_HAZARD = 41.5;
    /** Above it densities are so narrow that more points are needed. */
    private static final double NARROW = 4;
    private static final GaussIntegrator WIDE_RULE = new GaussIntegratorFactory().legendre(32, 0, 1);
    private static final GaussIntegrator NARROW_RULE = new GaussIntegratorFactory().legendre(48, 0, 1);
    /** Points of the rule are drawn to the ends of an interval by this power, where densities and chances begin like powers. */
    private static final int DRAW = 4;

    private static final KeptResults<Asked, RenewalSeries> KEPT = new KeptResults<>();

    private record Asked(FoulingLife clock, double most) {}

    private final FoulingLife clock;
    private final GaussIntegrator rule;
    private final double most;
    private final double power;
    private final double[] nodes;
    private final double[] weights;
    /** The chances of at least 1, 2, ... stops at each node. */
    private final List<double[]> atLeast = new ArrayList<>();

    /**
     * The series of a clock; worked out once, since ways of care and horizons share it.
     *
     * @param most months that are asked for
     */
    public static RenewalSeries of(FoulingLife clock, double most) {
        return KEPT.get(new Asked(clock, most), asked -> new RenewalSeries(asked.clock(), asked.most()));
    }

    private RenewalSeries(FoulingLife clock, double most) {
        Check.that(most > 0, "a series of " + most + " months");
        this.clock = clock;
        this.most = most;
        this.rule = clock.shape() > NARROW ? NARROW_RULE : WIDE_RULE;
        this.power = clock.shape() / Math.max(1, Math.floor(clock.shape()));
        int count = nodes(clock.shape(), most / clock.scale());
        this.nodes = new double[count + 1];
        this.weights = new double[count + 1];
        for (int j = 0; j <= count; j++) {
            // The end points are exact, so that t = 0 and t = most are nodes.
            nodes[j] = place(most) * (j == 0 ? 0 : j == count ? 1 : (1 - Math.cos(Math.PI * j / count)) / 2);
            weights[j] = (j % 2 == 0 ? 1 : -1) * (j == 0 || j == count ? 0.5 : 1);
        }
        fill();
    }

    private static int nodes(double shape, double scales) {
        double steep = Math.max(0, shape - STEEP_FROM) * Math.sqrt(Math.min(scales, STEEP_SCALES));
        return FEWEST_NODES + (int) ((NODES_PER_SCALE + NODES_PER_SHAPE * shape) * shape * scales
                + NODES_WHERE_STEEP * steep);
    }

    /** Where a month lies among the nodes. */
    private double place(double months) {
        return Math.pow(months / clock.scale(), power);
    }

    private double monthAt(int node) {
        return node == nodes.length - 1 ? most : clock.scale() * Math.pow(nodes[node], 1 / power);
    }

    private void fill() {
        double[][] step = step();
        double[] chances = new double[nodes.length];
        for (int j = 0; j < nodes.length; j++) {
            chances[j] = clock.chanceBy(monthAt(j));
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
            convolve(0, monthAt(i), (density, left) -> spread(density, left, row));
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
        double last = Math.min(months, clock.monthsUntil(LAST_HAZARD, age));
        double half = last / 2;
        for (int q = 0; q < rule.getNumberOfPoints(); q++) {
            double point = rule.getPoint(q);
            double near = half * Math.pow(point, DRAW);
            double weight = rule.getWeight(q) * half * DRAW * Math.pow(point, DRAW - 1);
            part.of(weight * clock.density(age, near), months - near);
            part.of(weight * clock.density(age, last - near), months - last + near);
        }
    }

    /** Adds an amount times the interpolation at a month to the row. */
    private void spread(double amount, double months, double[] row) {
        double at = place(months);
        double sum = 0;
        double[] parts = new double[nodes.length];
        for (int j = 0; j < nodes.length; j++) {
            if (at == nodes[j]) {
                row[j] += amount;
                return;
            }
            parts[j] = weights[j] / (at - nodes[j]);
            sum += parts[j];
        }
        double scaled = amount / sum;
        for (int j = 0; j < nodes.length; j++) {
            row[j] += scaled * parts[j];
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
    public CountDistribution counts(double age, double months) {
        if (months <= 0) {
            return CountDistribution.NONE;
        }
        double[] row = new double[nodes.length];
        convolve(age, months, (density, left) -> spread(density, left, row));
        List<Double> atLeastNow = new ArrayList<>(
                List.of(1.0, -Math.expm1(-clock.hazard(age, months))));
        atLeast.forEach(chances -> atLeastNow.add(value(chances, row)));
        double[] chances = new double[atLeastNow.size()];
        double before = 1;
        for (int n = 0; n < chances.length; n++) {
            double next = n + 1 < chances.length ? Math.clamp(atLeastNow.get(n + 1), 0, before) : 0;
            chances[n] = before - next;
            before = next;
        }
        return CountDistribution.of(chances);
    }
}

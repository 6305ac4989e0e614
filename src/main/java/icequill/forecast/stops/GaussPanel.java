package icequill.forecast.stops;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A part of a stretch with its Gauss points.
 *
 * @param drawnFrom whether the points are drawn to its beginning
 * @param drawnUntil whether they are drawn to its end
 */
record GaussPanel(double from, double until, boolean drawnFrom, boolean drawnUntil) {

    /** Gauss points of a panel. */
    static final int POINTS = 12;

    private static final GaussIntegrator NODES = new GaussIntegratorFactory().legendre(POINTS, 0, 1);
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(28, 0, 1);
    private static final double[] BARYCENTRIC = new double[POINTS];
    /** Points are drawn to an end by this power. */
    private static final int DRAW = 5;

    static {
        Arrays.setAll(BARYCENTRIC, k -> (k % 2 == 0 ? 1 : -1)
                * Math.sqrt(NODES.getPoint(k) * (1 - NODES.getPoint(k)) * NODES.getWeight(k)));
    }

    /** Receives a month and its weight in an integral. */
    @FunctionalInterface
    interface Point {
        void of(double month, double weight);
    }

    static List<GaussPanel> of(double begins, List<Double> edges) {
        List<GaussPanel> panels = new ArrayList<>();
        int last = edges.size() - 1;
        for (int p = 0; p < last; p++) {
            panels.add(new GaussPanel(begins + edges.get(p), begins + edges.get(p + 1), p == 0, p == last - 1));
        }
        return panels;
    }

    /** The month at which a Gauss point stands. */
    double month(int k) {
        return monthAt(NODES.getPoint(k));
    }

    private double monthAt(double point) {
        return drawnFrom
                ? from + (until - from) * Math.pow(point, DRAW)
                : drawnUntil
                        ? until - (until - from) * Math.pow(1 - point, DRAW)
                        : from + (until - from) * point;
    }

    private double point(double month) {
        double part = Math.clamp((month - from) / (until - from), 0, 1);
        return drawnFrom
                ? Math.pow(part, 1.0 / DRAW)
                : drawnUntil ? 1 - Math.pow(Math.max(0, (until - month) / (until - from)), 1.0 / DRAW) : part;
    }

    /** Of a Gauss point, in an integral over the months. */
    double weight(int k) {
        double point = NODES.getPoint(k);
        double slope = drawnFrom
                ? DRAW * Math.pow(point, DRAW - 1)
                : drawnUntil ? DRAW * Math.pow(1 - point, DRAW - 1) : 1;
        return NODES.getWeight(k) * slope * (until - from);
    }

    /** Barycentric interpolation between the Gauss points. */
    double[] interpolation(double month) {
        double at = point(month);
        double[] parts = new double[POINTS];
        double sum = 0;
        for (int k = 0; k < parts.length; k++) {
            double node = NODES.getPoint(k);
            if (node == at) {
                Arrays.fill(parts, 0);
                parts[k] = 1;
                return parts;
            }
            parts[k] = BARYCENTRIC[k] / (at - node);
            sum += parts[k];
        }
        for (int k = 0; k < parts.length; k++) {
            parts[k] /= sum;
        }
        return parts;
    }

    /** Points of a finer rule up to a month, drawn to both ends. */
    void rule(double most, Point point) {
        double half = (most - from) / 2;
        for (int q = 0; q < RULE.getNumberOfPoints(); q++) {
            double near = half * Math.pow(RULE.getPoint(q), DRAW);
            double weight = RULE.getWeight(q) * half * DRAW * Math.pow(RULE.getPoint(q), DRAW - 1);
            point.of(from + near, weight);
            point.of(most - near, weight);
        }
    }
}

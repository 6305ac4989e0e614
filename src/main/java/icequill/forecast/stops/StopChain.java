package icequill.forecast.stops;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Counts the stops of a side of which some dirt outlives a cleaning, or a call. From one cleaning call to the next the age of the dirt
 * follows from the calendar, so those calls form a chain: the density of one at a month, with so many stops up to it, is an integral
 * over the month of the one before; the stops in between, whose calls clean nothing, are Poisson (thinning of a nonhomogeneous Poisson
 * process). Densities stand at Gauss points of panels between cleanings, drawn to both ends of a stretch, where they begin like
 * powers. For shapes from 1.3 on chances are right to 1e-8, for smaller ones to 1e-5.
 */
final class StopChain {

    private static final GaussIntegrator NODES = new GaussIntegratorFactory().legendre(12, 0, 1);
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(28, 0, 1);
    private static final double[] BARYCENTRIC = new double[NODES.getNumberOfPoints()];
    /** Points are drawn to an end by this power. */
    private static final int DRAW = 5;
    /** A panel is no longer than that many widths of the clock's density. */
    private static final double WIDTHS = 1.2;
    /** How many times as long a panel may be as those before it together. */
    private static final double WIDER = 2.5;
    private static final double NEGLIGIBLE = 1e-18;
    private static final int MOST_STOPS = 2000;
    /** Hardly any call has cleaned nothing while the hazard of such that do grew by so much. */
    private static final double LAST_HAZARD = 41.5;

    static {
        Arrays.setAll(BARYCENTRIC, k -> (k % 2 == 0 ? 1 : -1)
                * Math.sqrt(NODES.getPoint(k) * (1 - NODES.getPoint(k)) * NODES.getWeight(k)));
    }

    private final FoulingLife clock;
    private final double cleans;
    private final Stretches stretches;
    private final double[] begins;
    private final List<Node> known = new ArrayList<>();

    /** The months from a cleaning call, or from the beginning, on: ages and hazards at the beginning of each later stretch. */
    private final class Path {
        private final double[] ages = new double[begins.length];
        private final double[] hazards = new double[begins.length];
        private final double from;
        private final int first;

        Path(int first, double from, double age) {
            this.first = first;
            this.from = from;
            ages[first] = age;
            for (int later = first + 1; later < begins.length; later++) {
                double gone = begins[later] - start(later - 1);
                hazards[later] = hazards[later - 1] + clock.hazard(ages[later - 1], gone);
                ages[later] = stretches.leaves() * (ages[later - 1] + gone);
            }
        }

        private double start(int stretch) {
            return stretch == first ? from : begins[stretch];
        }

        double hazard(int stretch, double month) {
            return hazards[stretch] + clock.hazard(ages[stretch], month - start(stretch));
        }

        double rate(int stretch, double month) {
            return clock.rate(ages[stretch] + month - start(stretch));
        }
    }

    /** A month at which a call may clean: its weight in integrals, and the density by the number of stops up to it. */
    private static final class Node {
        private final double month;
        private final double weight;
        private final Path path;
        private double[] density = {};

        Node(double month, double weight, Path path) {
            this.month = month;
            this.weight = weight;
            this.path = path;
        }
    }

    /**
     * A chain.
     *
     * @param cleans the part of the calls that clean, above 0
     */
    StopChain(FoulingLife clock, double cleans, Stretches stretches) {
        this.clock = clock;
        this.cleans = cleans;
        this.stretches = stretches;
        this.begins = new double[stretches.lengths().size()];
        for (int i = 1; i < begins.length; i++) {
            begins[i] = begins[i - 1] + stretches.lengths().get(i - 1);
        }
    }

    /** The stops of a side with dirt of an age. */
    CountDistribution counts(double age) {
        Path beginning = new Path(0, 0, age);
        for (int stretch = 0; stretch < begins.length; stretch++) {
            if (stretches.lengths().get(stretch) > 0) {
                fill(stretch, beginning);
            }
        }
        int last = begins.length - 1;
        double end = begins[last] + stretches.lengths().getLast();
        Sum chances = new Sum();
        chances.add(1, 0, restarts(beginning.hazard(last, end)));
        for (Node node : known) {
            double[] restarts = restarts(node.path.hazard(last, end));
            for (int stops = 1; stops < node.density.length; stops++) {
                chances.add(node.weight * node.density[stops], stops, restarts);
            }
        }
        double[] all = chances.trimmed();
        for (int n = 0; n < all.length; n++) {
            all[n] = Math.max(0, all[n]);
        }
        return CountDistribution.of(all);
    }

    /** Amounts by a number of stops. */
    private static final class Sum {
        private final double[] amounts = new double[MOST_STOPS];
        private int reach;

        void add(double amount, int stops, double[] more) {
            int most = Math.min(more.length, MOST_STOPS - stops);
            for (int m = 0; m < most; m++) {
                amounts[stops + m] += amount * more[m];
            }
            reach = Math.max(reach, stops + most);
        }

        double[] trimmed() {
            int length = reach;
            while (length > 1 && Math.abs(amounts[length - 1]) < NEGLIGIBLE) {
                length--;
            }
            return Arrays.copyOf(amounts, length);
        }
    }

    /** The chances that no call cleans while the hazard grows by so much and 0, 1, ... calls only restart. */
    private double[] restarts(double hazard) {
        if (cleans * hazard > LAST_HAZARD) {
            return new double[0];
        }
        double mean = (1 - cleans) * hazard;
        int length = mean == 0 ? 1 : (int) Math.min(MOST_STOPS, mean + 12 * Math.sqrt(mean) + 12);
        double[] chances = new double[length];
        double logChance = -hazard;
        for (int n = 0; n < length; n++) {
            chances[n] = Math.exp(logChance);
            logChance += Math.log(mean / (n + 1));
        }
        return chances;
    }

    private void fill(int stretch, Path beginning) {
        List<Panel> panels = Panel.of(begins[stretch], edges(stretch, beginning.ages[stretch]));
        List<Node> here = new ArrayList<>();
        for (Panel panel : panels) {
            for (int k = 0; k < NODES.getNumberOfPoints(); k++) {
                double month = panel.month(NODES.getPoint(k));
                here.add(new Node(month, panel.weight(k), new Path(stretch, month, 0)));
            }
        }
        List<double[]> earlier = here.stream().map(node -> earlier(stretch, node.month, beginning)).toList();
        within(here, earlier, own(panels, here));
        known.addAll(here);
    }

    /** Where panels end, from the beginning of a stretch. Old dirt stops a machine soon, so they start as short as that takes. */
    private List<Double> edges(int stretch, double age) {
        double length = stretches.lengths().get(stretch);
        double width = WIDTHS * clock.scale() / Math.max(1, clock.shape());
        int count = Math.max(2, (int) Math.ceil(length / width));
        List<Double> edges = new ArrayList<>(List.of(0.0));
        for (double edge = clock.monthsUntil(1, age); edge < length / count / WIDER; edge *= WIDER) {
            edges.add(edge);
        }
        for (int p = 1; p <= count; p++) {
            edges.add(length * p / count);
        }
        return edges;
    }

    /** The density of a cleaning call at a month that follows one of an earlier stretch, or none. */
    private double[] earlier(int stretch, double month, Path beginning) {
        Sum sum = new Sum();
        sum.add(cleans * beginning.rate(stretch, month), 1, restarts(beginning.hazard(stretch, month)));
        for (Node node : known) {
            double[] restarts = restarts(node.path.hazard(stretch, month));
            double rate = node.weight * cleans * node.path.rate(stretch, month);
            for (int stops = 1; stops < node.density.length; stops++) {
                sum.add(rate * node.density[stops], stops + 1, restarts);
            }
        }
        return sum.trimmed();
    }

    /** What leads from the nodes of a stretch to each of them: by stops in between, then by node. */
    private List<double[][]> own(List<Panel> panels, List<Node> here) {
        int count = NODES.getNumberOfPoints();
        List<double[][]> own = new ArrayList<>();
        for (int i = 0; i < here.size(); i++) {
            double month = here.get(i).month;
            List<double[]> rows = new ArrayList<>();
            for (int p = 0; p <= i / count; p++) {
                Panel panel = panels.get(p);
                int offset = p * count;
                panel.rule(Math.min(month, panel.until()), (at, weight) -> {
                    double[] restarts = restarts(clock.hazard(month - at));
                    double[] parts = panel.interpolation(at);
                    double rate = weight * cleans * clock.rate(month - at);
                    for (int m = 0; m < restarts.length; m++) {
                        if (rows.size() == m) {
                            rows.add(new double[here.size()]);
                        }
                        double[] row = rows.get(m);
                        for (int k = 0; k < count; k++) {
                            row[offset + k] += rate * restarts[m] * parts[k];
                        }
                    }
                });
            }
            own.add(rows.toArray(double[][]::new));
        }
        return own;
    }

    /** Densities of calls that follow others of the same stretch: one stop after another, until nothing more comes. */
    private static void within(List<Node> here, List<double[]> earlier, List<double[][]> own) {
        int reach = earlier.stream().mapToInt(found -> found.length).max().orElseThrow();
        List<double[]> byStops = new ArrayList<>(List.of(new double[here.size()]));
        boolean more = true;
        while (byStops.size() < MOST_STOPS && (more || byStops.size() < reach)) {
            int stops = byStops.size();
            double[] density = new double[here.size()];
            more = false;
            for (int i = 0; i < density.length; i++) {
                double sum = stops < earlier.get(i).length ? earlier.get(i)[stops] : 0;
                double[][] rows = own.get(i);
                for (int m = 0; m < rows.length && m < stops; m++) {
                    double[] before = byStops.get(stops - 1 - m);
                    double[] row = rows[m];
                    for (int k = 0; k < row.length; k++) {
                        sum += row[k] * before[k];
                    }
                }
                density[i] = sum;
                more |= Math.abs(sum) > NEGLIGIBLE;
            }
            byStops.add(density);
        }
        for (int i = 0; i < here.size(); i++) {
            double[] density = new double[byStops.size()];
            for (int stops = 0; stops < density.length; stops++) {
                density[stops] = byStops.get(stops)[i];
            }
            here.get(i).density = density;
        }
    }

    /**
     * A part of a stretch with its Gauss points.
     *
     * @param drawnFrom whether the points are drawn to its beginning
     * @param drawnUntil whether they are drawn to its end
     */
    private record Panel(double from, double until, boolean drawnFrom, boolean drawnUntil) {

        static List<Panel> of(double begins, List<Double> edges) {
            List<Panel> panels = new ArrayList<>();
            int last = edges.size() - 1;
            for (int p = 0; p < last; p++) {
                panels.add(new Panel(begins + edges.get(p), begins + edges.get(p + 1), p == 0, p == last - 1));
            }
            return panels;
        }

        double month(double point) {
            return drawnFrom
                    ? from + (until - from) * Math.pow(point, DRAW)
                    : drawnUntil
                            ? until - (until - from) * Math.pow(1 - point, DRAW)
                            : from + (until - from) * point;
        }

        double point(double month) {
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
            double[] parts = new double[NODES.getNumberOfPoints()];
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

    /** Receives a month and its weight in an integral. */
    @FunctionalInterface
    private interface Point {
        void of(double month, double weight);
    }
}

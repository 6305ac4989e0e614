package icequill.forecast.stops;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Counts the stops of a side of which some dirt outlives a cleaning, or a call. From one cleaning call to the next the age of the dirt
 * follows from the calendar, so those calls form a chain: the density of one at a month, with so many stops up to it, is an integral
 * over the month of the one before; the stops in between, whose calls clean nothing, are Poisson (thinning of a nonhomogeneous Poisson
 * process). Densities stand at Gauss points of panels between cleanings, drawn to both ends of a stretch, where they begin like
 * powers. For shapes from 1.3 on chances are right to 1e-8, for smaller ones to 1e-5.
 */
final class StopChain {

    /** A panel is no longer than that many widths of the clock's density. */
    private static final double WIDTHS = 1.2;
    /** How many times as long a panel may be as those before it together. */
    private static final double WIDER = 2.5;
    private static final double NEGLIGIBLE = 1e-18;
    private static final int MOST_STOPS = 2000;
    /** Hardly any call has cleaned nothing while the hazard of such that do grew by so much. */
    private static final double LAST_HAZARD = 41.5;

    private final FoulingLife clock;
    private final double cleans;
    private final Stretches stretches;
    private final double[] begins;
    private final List<Node> known = new ArrayList<>();

    /** A month at which a call may clean: its weight in integrals, and the density by the number of stops up to it. */
    private static final class Node {
        private final double month;
        private final double weight;
        private final AgePath path;
        private double[] density = {};

        Node(double month, double weight, AgePath path) {
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
        this.begins = stretches.begins();
    }

    /** The stops of a side with dirt of an age. */
    CountDistribution counts(double age) {
        AgePath beginning = new AgePath(clock, stretches, 0, 0, age);
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

    private void fill(int stretch, AgePath beginning) {
        List<GaussPanel> panels = GaussPanel.of(begins[stretch], edges(stretch, beginning.age(stretch)));
        List<Node> here = new ArrayList<>();
        for (GaussPanel panel : panels) {
            for (int k = 0; k < GaussPanel.POINTS; k++) {
                double month = panel.month(k);
                here.add(new Node(month, panel.weight(k), new AgePath(clock, stretches, stretch, month, 0)));
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
    private double[] earlier(int stretch, double month, AgePath beginning) {
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
    private List<double[][]> own(List<GaussPanel> panels, List<Node> here) {
        int count = GaussPanel.POINTS;
        List<double[][]> own = new ArrayList<>();
        for (int i = 0; i < here.size(); i++) {
            double month = here.get(i).month;
            List<double[]> rows = new ArrayList<>();
            for (int p = 0; p <= i / count; p++) {
                GaussPanel panel = panels.get(p);
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

}

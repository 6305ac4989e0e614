package icequill.oracle;

import java.util.List;

/**
 * Stops of one side as plain sums on a grid: the month of the last cleaning call stands in the middle of a cell, and what is left of a
 * clock leads from cell to cell. The error falls with the square of the cell, so two grids are drawn out to none (Richardson). It knows
 * nothing of the program; each call cleans.
 *
 * @param shape of the Weibull clock
 * @param scale in months
 * @param cleanings their months, rising, before the horizon
 * @param restores the part of the age that each takes away
 */
public record GridStops(double shape, double scale, List<Double> cleanings, double restores) {

    private static final int MOST = 120;
    /** The hazard of a first cell from which it is too long. */
    private static final double SOON = 0.01;
    private static final double DRAW = 4;
    /** A chance of a cell that is not led on; hundreds of cells of it come to far less than what figures may differ by. */
    private static final double NEGLIGIBLE = 1e-13;

    /** The chances of 0, 1, ... stops within the months, of dirt that has an age at their beginning. */
    public double[] chances(double age, double months, int cells) {
        double[] coarse = onGrid(age, months, cells);
        double[] fine = onGrid(age, months, 2 * cells);
        for (int n = 0; n < fine.length; n++) {
            fine[n] += (fine[n] - coarse[n]) / 3;
        }
        return fine;
    }

    private double[] onGrid(double age, double months, int cells) {
        // Old dirt stops a machine within hours, so cells are drawn to the beginning.
        double draw = grown(age, months / cells) > SOON ? DRAW : 1;
        double[] edges = new double[cells + 1];
        for (int j = 0; j <= cells; j++) {
            edges[j] = months * Math.pow((double) j / cells, draw);
        }
        double[][] stopped = new double[cells][MOST];
        double[] chances = new double[MOST];
        double[] left = left(-1, age, 0, edges);
        chances[0] = left[cells];
        for (int j = 0; j < cells; j++) {
            stopped[j][1] = left[j] - left[j + 1];
        }
        for (int i = 0; i < cells; i++) {
            double[] next = left(i, 0, (edges[i] + edges[i + 1]) / 2, edges);
            int most = MOST - 1;
            while (most > 0 && stopped[i][most] < NEGLIGIBLE) {
                most--;
            }
            for (int n = 1; n <= most && n < MOST - 1; n++) {
                double again = stopped[i][n] * (1 - next[i + 1]);
                stopped[i][n + 1] += again;
                most = again > NEGLIGIBLE ? Math.max(most, n + 1) : most;
            }
            for (int n = 1; n <= most; n++) {
                chances[n] += stopped[i][n] * next[cells];
            }
            for (int j = i + 1; j < cells; j++) {
                double part = next[j] - next[j + 1];
                for (int n = 1; n <= most && n < MOST - 1; n++) {
                    double more = stopped[i][n] * part;
                    stopped[j][n + 1] += more;
                }
            }
        }
        return chances;
    }

    /** The chance at each edge after a month that nothing has stopped since. */
    private double[] left(int cell, double age, double from, double[] edges) {
        double[] left = new double[edges.length];
        double hazard = 0;
        double at = from;
        double dirt = age;
        int next = 0;
        while (next < cleanings.size() && cleanings.get(next) < from) {
            next++;
        }
        for (int j = 0; j < edges.length; j++) {
            if (j <= cell) {
                left[j] = 1;
                continue;
            }
            while (next < cleanings.size() && cleanings.get(next) <= edges[j]) {
                hazard += grown(dirt, cleanings.get(next) - at);
                dirt = (dirt + cleanings.get(next) - at) * (1 - restores);
                at = cleanings.get(next);
                next++;
            }
            left[j] = Math.exp(-hazard - grown(dirt, edges[j] - at));
        }
        return left;
    }

    private double grown(double dirt, double months) {
        return Math.pow((dirt + months) / scale, shape) - Math.pow(dirt / scale, shape);
    }

    /** The mean of a number that has these chances. */
    public static double mean(double[] chances) {
        double sum = 0;
        for (int n = 0; n < chances.length; n++) {
            sum += n * chances[n];
        }
        return sum;
    }
}

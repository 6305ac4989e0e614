package icequill.forecast;

import icequill.forecast.ChargePart.Amount;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Adds up a sum of charges one call after another, over those sums alone that can come out. As a few calls have few kinds of charges,
 * these are far fewer than all minor units between them. Chances below {@value #NEGLIGIBLE} are left out on the way.
 */
final class PointSum {

    private static final double NEGLIGIBLE = 1e-18;
    /** With more sums, or more additions, other ways of adding up are faster. */
    private static final int MOST_POINTS = 1 << 17;
    private static final long MOST_ADDITIONS = 1L << 22;

    private final long high;
    private long[] points = {0};
    private double[] chances = {1};
    private long additions;

    private PointSum(long high) {
        this.high = high;
    }

    /** The sums up to so many minor units, in their order, and their chances; empty where there are too many. */
    static Optional<PointSum> of(List<ChargePart> parts, long high) {
        PointSum sum = new PointSum(high);
        for (ChargePart part : parts) {
            if (!sum.add(part)) {
                return Optional.empty();
            }
        }
        return Optional.of(sum);
    }

    /** In minor units, rising; the caller's own from here. */
    long[] points() {
        return points;
    }

    /** One for each point; the caller's own from here. */
    double[] chances() {
        return chances;
    }

    /** Horner's scheme: what was, if no call comes, and otherwise one charge more than what the calls after it come to. */
    private boolean add(ChargePart part) {
        long[] before = points;
        double[] beforehand = chances;
        points = new long[0];
        chances = new double[0];
        for (int calls = part.counts().most(); calls >= 0; calls--) {
            if (!merge(before, beforehand, part.counts().chance(calls), part.amounts())) {
                return false;
            }
        }
        return true;
    }

    /** One charge more on each point, and the points of before with a chance. */
    private boolean merge(long[] before, double[] beforehand, double chance, List<Amount> amounts) {
        int sources = amounts.size() + 1;
        long[][] from = new long[sources][];
        double[][] weights = new double[sources][];
        long[] shift = new long[sources];
        double[] share = new double[sources];
        int length = before.length;
        for (int k = 0; k < sources; k++) {
            boolean isBefore = k == amounts.size();
            from[k] = isBefore ? before : points;
            weights[k] = isBefore ? beforehand : chances;
            shift[k] = isBefore ? 0 : amounts.get(k).minor();
            share[k] = isBefore ? chance : amounts.get(k).share();
            length += isBefore ? 0 : points.length;
        }
        additions += (long) length * sources;
        if (length > sources * MOST_POINTS || additions > MOST_ADDITIONS) {
            return false;
        }
        long[] merged = new long[length];
        double[] sums = new double[length];
        int[] at = new int[sources];
        int end = 0;
        while (true) {
            long next = Long.MAX_VALUE;
            for (int k = 0; k < sources; k++) {
                if (at[k] < from[k].length) {
                    next = Math.min(next, from[k][at[k]] + shift[k]);
                }
            }
            if (next > high) {
                break;
            }
            double sum = 0;
            for (int k = 0; k < sources; k++) {
                if (at[k] < from[k].length && from[k][at[k]] + shift[k] == next) {
                    sum += share[k] * weights[k][at[k]++];
                }
            }
            if (sum > NEGLIGIBLE) {
                merged[end] = next;
                sums[end++] = sum;
            }
        }
        points = Arrays.copyOf(merged, end);
        chances = Arrays.copyOf(sums, end);
        return true;
    }
}

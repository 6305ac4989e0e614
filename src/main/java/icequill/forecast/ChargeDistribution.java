package icequill.forecast;

import icequill.forecast.ChargePart.Amount;
import icequill.problem.Check;
import java.util.Arrays;
import java.util.List;

/**
 * The distribution of a sum of charges on a lattice of minor units. Mean and variance come from closed forms; chances and quantiles
 * from the lattice. Its step is one minor unit, or the largest that all charges are multiples of, as long as the sums can be
 * added up one by one ({@link PointSum} and {@link DirectSum}: up to {@value #MOST_POINTS} points and {@value #MOST_WORK} additions) or fit into a
 * Fourier transform ({@link LatticeSum}). Beyond that the transform has a wider step, which {@link #step} says: each charge is
 * split between its two neighbors so that its mean stays, and a quantile is off by about a step times the root of the number of
 * calls.
 */
public final class ChargeDistribution {

    /** Points of the longest lattice whose sums are added up one by one. */
    public static final int MOST_POINTS = 1 << 20;

    static final double MOST_WORK = 1 << 26;
    /** What rounding may be off by, so that a quantile does not slip to the next amount. */
    private static final double ROUNDING = 1e-12;

    /** The sums that can come out, in minor units, rising. */
    private final long[] points;
    /** The chances of at most the sum of each point. */
    private final double[] upTo;
    /** What is added to each point. */
    private final long fixed;
    private final long step;
    private final double mean;
    private final double variance;

    private ChargeDistribution(long[] points, double[] upTo, long fixed, long step, double mean, double variance) {
        this.points = points;
        this.upTo = upTo;
        this.fixed = fixed;
        this.step = step;
        this.mean = mean;
        this.variance = variance;
    }

    /** The sum of independent parts. */
    static ChargeDistribution of(List<ChargePart> parts) {
        long common = 0;
        double work = 0;
        for (ChargePart part : parts) {
            for (Amount amount : part.amounts()) {
                common = gcd(common, amount.minor());
            }
            work += part.counts().most() * (part.amounts().size() + 1.0);
        }
        long step = Math.max(1, common);
        SumRange range = SumRange.of(parts);
        long points = range.high() / step + 1;
        double mean = parts.stream().mapToDouble(ChargePart::mean).sum();
        double variance = parts.stream().mapToDouble(ChargePart::variance).sum();
        if (points <= MOST_POINTS && work * points <= MOST_WORK) {
            return PointSum.of(parts, range.high())
                    .map(few -> new ChargeDistribution(few.points(), summed(few.chances()), 0, step, mean, variance))
                    .orElseGet(() -> of(DirectSum.of(parts, step, (int) points), 0, step, mean, variance));
        }
        LatticeSum sum = LatticeSum.of(parts, range, step);
        return of(sum.chances(), sum.lowest(), sum.step(), mean, variance);
    }

    /** Of the chances of each step from the lowest on; steps without a chance are left out. */
    private static ChargeDistribution of(double[] chances, long lowest, long step, double mean, double variance) {
        long[] points = new long[chances.length];
        int end = 0;
        for (int k = 0; k < chances.length; k++) {
            if (chances[k] > 0 || k == 0) {
                points[end] = lowest + k * step;
                chances[end++] = chances[k];
            }
        }
        return new ChargeDistribution(Arrays.copyOf(points, end), summed(Arrays.copyOf(chances, end)), 0, step, mean,
                variance);
    }

    private static double[] summed(double[] chances) {
        double sum = 0;
        for (int k = 0; k < chances.length; k++) {
            sum += chances[k];
            chances[k] = Math.min(1, sum);
        }
        return chances;
    }

    private static long gcd(long one, long other) {
        return other == 0 ? one : gcd(other, one % other);
    }

    /** The same with a fixed amount of minor units besides. */
    ChargeDistribution plus(long besides) {
        return new ChargeDistribution(points, upTo, fixed + besides, step, mean + besides, variance);
    }

    /** Minor units on average. */
    public double mean() {
        return mean;
    }

    /** Standard deviation in minor units. */
    public double deviation() {
        return Math.sqrt(variance);
    }

    /** Minor units between two points of the lattice. */
    public long step() {
        return step;
    }

    /** The smallest amount of the lattice that is not exceeded with at least this chance, in minor units. */
    public long quantile(double chance) {
        Check.that(chance > 0 && chance < 1, "a chance of " + chance);
        int low = 0;
        int high = upTo.length - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (upTo[middle] >= chance - ROUNDING) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return fixed + points[low];
    }

    /** The chance of an amount of at most so many minor units. */
    public double chanceOfAtMost(long minor) {
        int found = Arrays.binarySearch(points, minor - fixed);
        int last = found >= 0 ? found : -found - 2;
        return last < 0 ? 0 : last == points.length - 1 ? 1 : upTo[last];
    }

    /** The chance of less than another sum that does not depend on this one. */
    double chanceOfLessThan(ChargeDistribution other) {
        double sum = 0;
        double before = 0;
        int otherwise = 0;
        for (int k = 0; k < points.length; k++) {
            while (otherwise < other.points.length && other.fixed + other.points[otherwise] <= fixed + points[k]) {
                otherwise++;
            }
            if (otherwise == other.points.length) {
                break;
            }
            sum += (upTo[k] - before) * (1 - (otherwise == 0 ? 0 : other.upTo[otherwise - 1]));
            before = upTo[k];
        }
        return Math.clamp(sum, 0, 1);
    }
}

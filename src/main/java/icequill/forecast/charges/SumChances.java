package icequill.forecast.charges;

import icequill.forecast.charges.ChargePart.Amount;
import java.util.Arrays;
import java.util.List;

/** The sums that charges can come to and their chances. */
final class SumChances {

    private static final double MOST_WORK = 1 << 26;
    /** What rounding may be off by, so that a quantile does not slip to the next amount. */
    private static final double ROUNDING = 1e-12;

    /** In minor units, rising. */
    private final long[] points;
    /** The chances of at most the sum of each point. */
    private final double[] upTo;
    private final long step;

    private SumChances(long[] points, double[] upTo, long step) {
        this.points = points;
        this.upTo = upTo;
        this.step = step;
    }

    /** Of independent parts, added up in the way that is the fastest for so many. */
    static SumChances of(List<ChargePart> parts) {
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
        if (points <= ChargeDistribution.MOST_POINTS && work * points <= MOST_WORK) {
            return PointSum.of(parts, range.high())
                    .map(few -> new SumChances(few.points(), summed(few.chances()), step))
                    .orElseGet(() -> of(DirectSum.of(parts, step, (int) points), 0, step));
        }
        LatticeSum sum = LatticeSum.of(parts, range, step);
        return of(sum.chances(), sum.lowest(), sum.step());
    }

    /** Of the chances of each step from the lowest on; steps without a chance are left out. */
    private static SumChances of(double[] chances, long lowest, long step) {
        long[] points = new long[chances.length];
        int end = 0;
        for (int k = 0; k < chances.length; k++) {
            if (chances[k] > 0 || k == 0) {
                points[end] = lowest + k * step;
                chances[end++] = chances[k];
            }
        }
        return new SumChances(Arrays.copyOf(points, end), summed(Arrays.copyOf(chances, end)), step);
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

    /** Minor units between two points of the lattice. */
    long step() {
        return step;
    }

    /** The smallest sum that is not exceeded with at least this chance. */
    long quantile(double chance) {
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
        return points[low];
    }

    /** The chance of at most so many minor units. */
    double ofAtMost(long minor) {
        int found = Arrays.binarySearch(points, minor);
        int last = found >= 0 ? found : -found - 2;
        return last < 0 ? 0 : last == points.length - 1 ? 1 : upTo[last];
    }

    /** The chance of less than another sum, and so many minor units more, that does not depend on this one. */
    double ofLessThan(SumChances other, long more) {
        double sum = 0;
        double before = 0;
        int otherwise = 0;
        for (int k = 0; k < points.length; k++) {
            while (otherwise < other.points.length && other.points[otherwise] + more <= points[k]) {
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

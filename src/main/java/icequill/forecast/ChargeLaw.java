package icequill.forecast;

import icequill.problem.Check;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/**
 * The distribution of a sum of charges on a lattice of minor units, found by generating functions and a Fourier transform. Mean
 * and variance come from closed forms; chances and quantiles from the lattice, whose step is one minor unit, or the largest that
 * all amounts are multiples of. A sum that would need more than {@value #MOST_POINTS} points is set on a wider lattice: each
 * amount is split between its two neighbors so that its mean stays.
 */
public final class ChargeLaw {

    /** Points of the widest lattice. */
    public static final int MOST_POINTS = 1 << 20;

    /** What the transform may be off by, so that a quantile does not slip to the next amount. */
    private static final double ROUNDING = 1e-12;

    private final double[] chances;
    private final long lowest;
    private final long step;
    private final double mean;
    private final double variance;

    /**
     * Calls that all draw their amounts alike, independent of other parts.
     *
     * @param counts how many
     * @param amounts with their shares, which add up to 1; negative where they are taken off
     */
    record Part(Counts counts, List<Amount> amounts) {

        double meanAmount() {
            return amounts.stream().mapToDouble(amount -> amount.share() * amount.minor()).sum();
        }

        double mean() {
            return counts.mean() * meanAmount();
        }

        /** Of a random sum: E[N] Var[X] + Var[N] E[X]^2. */
        double variance() {
            double mean = meanAmount();
            double second = amounts.stream().mapToDouble(amount -> amount.share() * amount.minor() * amount.minor())
                    .sum();
            return counts.mean() * (second - mean * mean) + counts.variance() * mean * mean;
        }
    }

    /** An amount of so many minor units. */
    record Amount(double share, long minor) {}

    private ChargeLaw(double[] chances, long lowest, long step, double mean, double variance) {
        this.chances = chances;
        this.lowest = lowest;
        this.step = step;
        this.mean = mean;
        this.variance = variance;
    }

    /** The sum of independent parts and a fixed amount of minor units. */
    static ChargeLaw of(List<Part> parts, long fixed) {
        long low = 0;
        long high = 0;
        long common = 0;
        for (Part part : parts) {
            for (Amount amount : part.amounts()) {
                common = gcd(common, Math.abs(amount.minor()));
            }
            low += part.counts().most() * Math.min(0, part.amounts().stream().mapToLong(Amount::minor).min().orElse(0));
            high += part.counts().most()
                    * Math.max(0, part.amounts().stream().mapToLong(Amount::minor).max().orElse(0));
        }
        long step = Math.max(1, common);
        while ((high - low) / step + 2 > MOST_POINTS) {
            step *= 2;
        }
        // A split amount may reach one step beyond each end.
        long most = parts.stream().mapToLong(part -> part.counts().most()).sum();
        long slack = step == Math.max(1, common) ? 0 : Math.min(most, MOST_POINTS / 4);
        long points = (high - low) / step + 1 + 2 * slack;
        int length = Integer.highestOneBit((int) Math.max(1, points - 1)) * 2;
        double mean = parts.stream().mapToDouble(Part::mean).sum() + fixed;
        double variance = parts.stream().mapToDouble(Part::variance).sum();
        double[] chances = transform(parts, length, step);
        long lowest = Math.floorDiv(low, step) - slack;
        return new ChargeLaw(rotated(chances, lowest), lowest * step + fixed, step, mean, variance);
    }

    private static double[] transform(List<Part> parts, int length, long step) {
        double[][] product = {new double[length], new double[length]};
        Arrays.fill(product[0], 1);
        double[] value = new double[2];
        for (Part part : parts) {
            double[][] single = {new double[length], new double[length]};
            part.amounts().forEach(amount -> split(amount, step, single[0]));
            FastFourierTransformer.transformInPlace(single, DftNormalization.STANDARD, TransformType.FORWARD);
            for (int k = 0; k < length; k++) {
                part.counts().generate(single[0][k], single[1][k], value);
                double re = product[0][k] * value[0] - product[1][k] * value[1];
                product[1][k] = product[0][k] * value[1] + product[1][k] * value[0];
                product[0][k] = re;
            }
        }
        FastFourierTransformer.transformInPlace(product, DftNormalization.STANDARD, TransformType.INVERSE);
        return product[0];
    }

    /** Sets an amount on the lattice, whose negative points follow the positive ones. */
    private static void split(Amount amount, long step, double[] lattice) {
        long below = Math.floorDiv(amount.minor(), step);
        double above = (double) Math.floorMod(amount.minor(), step) / step;
        lattice[Math.floorMod(below, lattice.length)] += amount.share() * (1 - above);
        if (above > 0) {
            lattice[Math.floorMod(below + 1, lattice.length)] += amount.share() * above;
        }
    }

    /** From the lowest point upwards; what the transform left below zero is nothing. */
    private static double[] rotated(double[] chances, long lowest) {
        double[] all = new double[chances.length];
        for (int k = 0; k < all.length; k++) {
            all[k] = Math.max(0, chances[Math.floorMod(lowest + k, all.length)]);
        }
        return all;
    }

    private static long gcd(long one, long other) {
        return other == 0 ? one : gcd(other, one % other);
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
        double sum = 0;
        for (int k = 0; k < chances.length; k++) {
            sum += chances[k];
            if (sum >= chance - ROUNDING) {
                return lowest + k * step;
            }
        }
        return lowest + (chances.length - 1) * step;
    }

    /** The chance of an amount of at most so many minor units. */
    public double chanceOfAtMost(long minor) {
        double sum = 0;
        for (int k = 0; k < chances.length && lowest + k * step <= minor; k++) {
            sum += chances[k];
        }
        return Math.min(1, sum);
    }

    /** The chance of an amount below so many minor units. */
    public double chanceOfLessThan(long minor) {
        return chanceOfAtMost(minor - 1);
    }
}

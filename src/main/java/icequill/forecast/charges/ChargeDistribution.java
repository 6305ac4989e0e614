package icequill.forecast.charges;

import icequill.problem.Check;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The distribution of a sum of charges on a lattice of minor units. Mean and variance come from closed forms; chances and quantiles
 * from the lattice, which is worked out when it is first asked for. Its step is one minor unit, or the largest that all charges are
 * multiples of, as long as the sums can be added up one by one ({@link PointSum} and {@link DirectSum}: up to {@value #MOST_POINTS}
 * points and 2^26 additions) or fit into a Fourier transform ({@link LatticeSum}). Beyond that the transform has a wider step, which
 * {@link #step} says: each charge is split between its two neighbors so that its mean stays, and a quantile is off by about a step
 * times the root of the number of calls.
 */
public final class ChargeDistribution {

    /** Points of the longest lattice whose sums are added up one by one. */
    public static final int MOST_POINTS = 1 << 20;

    private final Supplier<SumChances> chances;
    /** What is added to each sum. */
    private final long fixed;
    private final double mean;
    private final double variance;

    private ChargeDistribution(Supplier<SumChances> chances, long fixed, double mean, double variance) {
        this.chances = chances;
        this.fixed = fixed;
        this.mean = mean;
        this.variance = variance;
    }

    /** The sum of independent parts. */
    public static ChargeDistribution of(List<ChargePart> parts) {
        return new ChargeDistribution(once(() -> SumChances.of(parts)), 0,
                parts.stream().mapToDouble(ChargePart::mean).sum(),
                parts.stream().mapToDouble(ChargePart::variance).sum());
    }

    /** Works sums out when they are first asked for, and keeps them. */
    private static Supplier<SumChances> once(Supplier<SumChances> sums) {
        return new Supplier<>() {
            private @Nullable SumChances found;

            @Override
            public synchronized SumChances get() {
                SumChances known = found == null ? sums.get() : found;
                found = known;
                return known;
            }
        };
    }

    /** The same with a fixed amount of minor units besides. */
    public ChargeDistribution plus(long besides) {
        return new ChargeDistribution(chances, fixed + besides, mean + besides, variance);
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
        return chances.get().step();
    }

    /** The smallest amount of the lattice that is not exceeded with at least this chance, in minor units. */
    public long quantile(double chance) {
        Check.that(chance > 0 && chance < 1, "a chance of " + chance);
        return fixed + chances.get().quantile(chance);
    }

    /** The chance of an amount of at most so many minor units. */
    public double chanceOfAtMost(long minor) {
        return chances.get().ofAtMost(minor - fixed);
    }

    /** The chance of less than another sum that does not depend on this one. */
    public double chanceOfLessThan(ChargeDistribution other) {
        return chances.get().ofLessThan(other.chances.get(), other.fixed - fixed);
    }
}

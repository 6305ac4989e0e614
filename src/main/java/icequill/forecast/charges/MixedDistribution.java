package icequill.forecast.charges;

import icequill.problem.Check;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The distribution of a sum of charges when it is not sure which of some laws it follows.
 *
 * @param laws with their weights, which add up to 1
 */
public record MixedDistribution(List<Weighted> laws) {

    private static final double ROUNDING = 1e-9;

    /** A law, and the chance that it is the one. */
    public record Weighted(double weight, ChargeDistribution law) {}

    public MixedDistribution {
        laws = List.copyOf(laws);
        double sum = laws.stream().mapToDouble(Weighted::weight).sum();
        Check.that(Math.abs(sum - 1) < ROUNDING, "weights that add up to " + sum);
    }

    /** Laws, each with its weight. */
    public static MixedDistribution of(List<Double> weights, List<ChargeDistribution> laws) {
        return new MixedDistribution(
                IntStream.range(0, laws.size()).mapToObj(i -> new Weighted(weights.get(i), laws.get(i)))
                        .toList());
    }

    /** Minor units on average. */
    public double mean() {
        return laws.stream().mapToDouble(law -> law.weight() * law.law().mean()).sum();
    }

    /** Standard deviation in minor units. */
    public double deviation() {
        double mean = mean();
        return Math.sqrt(laws.stream().mapToDouble(
                law -> law.weight() * (Math.pow(law.law().deviation(), 2) + Math.pow(law.law().mean() - mean, 2)))
                .sum());
    }

    /** Minor units between two points of the coarsest lattice. */
    public long step() {
        return laws.stream().mapToLong(law -> law.law().step()).max().orElseThrow();
    }

    /** The chance of an amount of at most so many minor units. */
    public double chanceOfAtMost(long minor) {
        return laws.stream().mapToDouble(law -> law.weight() * law.law().chanceOfAtMost(minor)).sum();
    }

    /** The smallest amount that is not exceeded with at least this chance, in minor units. */
    public long quantile(double chance) {
        // It lies between the least and the largest quantile of all laws.
        long low = laws.stream().mapToLong(law -> law.law().quantile(chance)).min().orElseThrow();
        long high = laws.stream().mapToLong(law -> law.law().quantile(chance)).max().orElseThrow();
        while (low < high) {
            long middle = Math.floorDiv(low + high, 2);
            if (chanceOfAtMost(middle) >= chance - ROUNDING) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}

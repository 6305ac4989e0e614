package icequill.forecast;

import icequill.problem.Check;
import java.util.List;

/**
 * The distribution of a sum of charges when it is not sure which of some laws it follows.
 *
 * @param laws with their weights, which add up to 1
 */
public record MixedLaw(List<Weighted> laws) {

    private static final double ROUNDING = 1e-9;

    /** A law, and the chance that it is the one. */
    public record Weighted(double weight, ChargeLaw law) {}

    public MixedLaw {
        laws = List.copyOf(laws);
        double sum = laws.stream().mapToDouble(Weighted::weight).sum();
        Check.that(Math.abs(sum - 1) < ROUNDING, "weights that add up to " + sum);
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

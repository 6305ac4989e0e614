package icequill.forecast.charges;

import icequill.forecast.stops.CountDistribution;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Calls that all draw their charges alike, independent of other parts.
 *
 * @param counts how many
 * @param amounts with their shares, which add up to 1; equal ones count as one
 */
public record ChargePart(CountDistribution counts, List<Amount> amounts) {

    /** A charge of so many minor units, from 0. */
    public record Amount(double share, long minor) {}

    public ChargePart {
        Map<Long, Double> shares = new TreeMap<>();
        amounts.forEach(amount -> shares.merge(amount.minor(), amount.share(), Double::sum));
        amounts = shares.entrySet().stream().map(same -> new Amount(same.getValue(), same.getKey())).toList();
    }

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

    /** The mean of e to the power of the sum times a rate. */
    double exponential(double rate) {
        return counts.generate(
                amounts.stream().mapToDouble(amount -> amount.share() * Math.exp(rate * amount.minor())).sum());
    }

    long most() {
        return amounts.stream().mapToLong(Amount::minor).max().orElse(0);
    }
}

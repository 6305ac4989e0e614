package icequill.forecast.charges;

import icequill.forecast.charges.ChargePart.Amount;
import icequill.forecast.stops.CountDistribution;
import icequill.problem.Check;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What the calls of one cause cost more, or less, under one choice than under another that has the same calls.
 *
 * @param more by kind of call, with its share, in minor units; below zero where the first choice is the cheaper one
 */
public record Difference(List<Amount> more) {

    /** Kinds stand in the same order under both. */
    public static Difference of(List<Amount> own, List<Amount> others) {
        Check.that(own.size() == others.size(), "calls of different kinds");
        return new Difference(IntStream.range(0, own.size())
                .mapToObj(i -> new Amount(own.get(i).share(), own.get(i).minor() - others.get(i).minor())).toList());
    }

    /** Whether no kind is dearer under the first choice. */
    public boolean isNeverDearer() {
        return more.stream().allMatch(amount -> amount.minor() <= 0);
    }

    /** Whether one of them is never the dearer one. */
    public boolean isOneSided() {
        return isNeverDearer() || more.stream().allMatch(amount -> amount.minor() >= 0);
    }

    /** What the first choice costs more for its dearer kinds; empty where it has none. */
    public Optional<ChargePart> dearer(CountDistribution calls) {
        return part(more.stream().filter(amount -> amount.minor() > 0).toList(), calls);
    }

    /** What the second choice costs more for its dearer kinds; empty where it has none. */
    public Optional<ChargePart> cheaper(CountDistribution calls) {
        return part(more.stream().filter(amount -> amount.minor() < 0)
                .map(amount -> new Amount(amount.share(), -amount.minor())).toList(), calls);
    }

    /**
     * Calls of some kinds. Of one-sided differences it is all calls, those of other kinds costing nothing; otherwise calls come as a
     * Poisson process, so those of some kinds do not depend on those of others.
     */
    private Optional<ChargePart> part(List<Amount> some, CountDistribution calls) {
        if (some.isEmpty()) {
            return Optional.empty();
        }
        if (isOneSided()) {
            return Optional.of(new ChargePart(calls,
                    more.stream().map(amount -> new Amount(amount.share(), Math.abs(amount.minor()))).toList()));
        }
        double share = some.stream().mapToDouble(Amount::share).sum();
        return Optional.of(new ChargePart(CountDistribution.poisson(calls.mean() * share),
                some.stream().map(amount -> new Amount(amount.share() / share, amount.minor())).toList()));
    }
}

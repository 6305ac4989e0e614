package icequill.money;

import icequill.problem.Check;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Divides an amount by weights so that the shares add up to it: the largest-remainder (Hamilton) method in minor units.
 * Each share is first cut down to whole minor units; the units left over go to the largest cut-off parts, ties in order.
 */
public final class Shares {

    private Shares() {
    }

    /**
     * The shares, in the order of the weights. A negative amount is divided like its positive and the sign restored.
     *
     * @param weights zero or more each, not all zero
     * @throws IllegalArgumentException when the amount has more decimals than its currency or a weight is out of bounds
     */
    public static List<MonetaryAmount> byLargestRemainder(MonetaryAmount amount, List<BigDecimal> weights) {
        Check.that(Amounts.isWhole(amount), "only whole minor units can be shared, not " + amount);
        CurrencyUnit currency = amount.getCurrency();
        return byLargestRemainder(Amounts.number(amount), weights, currency.getDefaultFractionDigits()).stream()
                .map(share -> Amounts.of(share, currency)).toList();
    }

    /**
     * The same for a plain number.
     *
     * @param decimals how many decimals a share has; the amount has no more
     */
    public static List<BigDecimal> byLargestRemainder(BigDecimal amount, List<BigDecimal> weights, int decimals) {
        Check.that(weights.stream().allMatch(weight -> weight.signum() >= 0), "a weight is negative: " + weights);
        BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        Check.that(sum.signum() > 0, "all weights are zero");
        BigInteger units = amount.abs().movePointRight(decimals).toBigIntegerExact();
        List<BigFraction> quotas = weights.stream()
                .map(weight -> Exact.of(weight).divide(Exact.of(sum)).multiply(units)).toList();
        List<BigInteger> shares = new ArrayList<>(
                quotas.stream().map(quota -> quota.getNumerator().divide(quota.getDenominator())).toList());
        int left = units.subtract(shares.stream().reduce(BigInteger.ZERO, BigInteger::add)).intValueExact();
        byCutOffPart(quotas).limit(left).forEach(i -> shares.set(i, shares.get(i).add(BigInteger.ONE)));
        BigInteger sign = BigInteger.valueOf(amount.signum());
        return shares.stream().map(share -> new BigDecimal(share.multiply(sign), decimals)).toList();
    }

    private static IntStream byCutOffPart(List<BigFraction> quotas) {
        return IntStream.range(0, quotas.size()).boxed()
                .sorted(Comparator.comparing((Integer i) -> cutOff(quotas.get(i))).reversed()
                        .thenComparing(Comparator.naturalOrder()))
                .mapToInt(Integer::intValue);
    }

    private static BigFraction cutOff(BigFraction quota) {
        return quota.subtract(quota.getNumerator().divide(quota.getDenominator()));
    }
}

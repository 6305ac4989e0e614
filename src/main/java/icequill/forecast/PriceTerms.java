package icequill.forecast;

import icequill.money.Exact;
import icequill.money.Percent;
import icequill.problem.Check;
import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How amounts of later years are counted. Prices rise at the beginning of each year, and what falls into a year is brought back to
 * today from its beginning.
 *
 * @param inflation a year, from -50 % to 100 %
 * @param discount a year, from 0 % to 100 %
 */
public record PriceTerms(Percent inflation, Percent discount) {

    private static final BigDecimal LEAST = new BigDecimal("-50");
    private static final BigDecimal MOST = new BigDecimal("100");
    private static final int HUNDRED = 100;

    /** Today's prices in every year, none worth less for being later. */
    public static final PriceTerms NONE = new PriceTerms(Percent.ZERO, Percent.ZERO);

    public PriceTerms {
        Check.inRange(inflation.value(), LEAST, MOST, "inflation");
        Check.inRange(discount.value(), BigDecimal.ZERO, MOST, "discount");
    }

    /** Whether all years count alike. */
    public boolean isNone() {
        return inflation.equals(discount);
    }

    /** What one of today's minor units is counted as in a year, from 0. */
    BigFraction factor(int year) {
        return grown(inflation).divide(grown(discount)).pow(year);
    }

    private static BigFraction grown(Percent rate) {
        return BigFraction.ONE.add(Exact.of(rate.value()).divide(HUNDRED));
    }
}

package icequill.forecast.charges;

import java.util.List;

/**
 * Where a sum of charges lies all but certainly, by Chernoff's bound: the chance of more than x is at most E[e^(rate X)] / e^(rate x)
 * at any rate, and of less likewise.
 *
 * @param low minor units; a chance below 1e-14 lies under it
 * @param high a chance below 1e-14 lies over it
 */
record SumRange(long low, long high) {

    private static final double LOG_CHANCE = 14 * Math.log(10);
    private static final double STEEPEST = 64;
    private static final int RATES = 48;

    static SumRange of(List<ChargePart> parts) {
        long largest = parts.stream().mapToLong(ChargePart::most).max().orElse(0);
        double high = parts.stream().mapToDouble(part -> (double) part.counts().most() * part.most()).sum();
        double low = 0;
        if (largest == 0) {
            return new SumRange(0, 0);
        }
        double rate = STEEPEST / largest;
        for (int i = 0; i < RATES; i++) {
            high = Math.min(high, (logMean(parts, rate) + LOG_CHANCE) / rate);
            low = Math.max(low, -(logMean(parts, -rate) + LOG_CHANCE) / rate);
            rate /= Math.sqrt(2);
        }
        return new SumRange((long) low, (long) Math.ceil(high));
    }

    private static double logMean(List<ChargePart> parts, double rate) {
        return parts.stream().mapToDouble(part -> Math.log(Math.max(part.exponential(rate), Double.MIN_NORMAL))).sum();
    }
}

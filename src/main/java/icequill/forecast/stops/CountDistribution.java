package icequill.forecast.stops;

import icequill.problem.Check;
import java.util.Arrays;
import java.util.List;

/** The distribution of a number of calls. Chances below {@value #NEGLIGIBLE} at its end are left out. */
public final class CountDistribution {

    private static final double NEGLIGIBLE = 1e-15;

    /** No call for certain. */
    public static final CountDistribution NONE = new CountDistribution(1);

    private final double[] chances;

    private CountDistribution(double... chances) {
        this.chances = chances;
    }

    /** Of the chances of no call, one call, and so on, which add up to 1. */
    static CountDistribution of(double[] chances) {
        int last = chances.length - 1;
        while (last > 0 && chances[last] < NEGLIGIBLE) {
            last--;
        }
        return new CountDistribution(Arrays.copyOf(chances, last + 1));
    }

    /** Calls that come at random: Poisson. */
    public static CountDistribution poisson(double mean) {
        Check.that(mean >= 0 && Double.isFinite(mean), "a mean of " + mean);
        int length = (int) (mean + 12 * Math.sqrt(mean) + 24);
        double[] chances = new double[length];
        double logChance = -mean;
        for (int n = 0; n < length; n++) {
            chances[n] = Math.exp(logChance);
            logChance += Math.log(mean) - Math.log(n + 1.0);
        }
        return of(chances);
    }

    /** The sum of these calls and others that do not depend on them. */
    public CountDistribution plus(CountDistribution other) {
        double[] sum = new double[chances.length + other.chances.length - 1];
        for (int i = 0; i < chances.length; i++) {
            for (int j = 0; j < other.chances.length; j++) {
                sum[i + j] += chances[i] * other.chances[j];
            }
        }
        return of(sum);
    }

    /** The sum of so many independent numbers like this one. */
    public CountDistribution times(int number) {
        Check.that(number >= 0, "a number of " + number);
        CountDistribution power = this;
        CountDistribution sum = NONE;
        for (int left = number; left > 0; left /= 2) {
            sum = left % 2 == 1 ? sum.plus(power) : sum;
            power = left > 1 ? power.plus(power) : power;
        }
        return sum;
    }

    /** The calls beyond so many, the first of which do not count. */
    public CountDistribution beyond(int first) {
        if (first >= chances.length) {
            return NONE;
        }
        double[] rest = Arrays.copyOfRange(chances, first, chances.length);
        for (int n = 0; n < first; n++) {
            rest[0] += chances[n];
        }
        return of(rest);
    }

    /**
     * The distribution when it is not sure which of some it is.
     *
     * @param weights of each, which add up to 1
     */
    public static CountDistribution mixed(List<Double> weights, List<CountDistribution> counts) {
        double[] sum = new double[counts.stream().mapToInt(CountDistribution::most).max().orElse(0) + 1];
        for (int i = 0; i < counts.size(); i++) {
            double[] own = counts.get(i).chances;
            for (int n = 0; n < own.length; n++) {
                sum[n] += weights.get(i) * own[n];
            }
        }
        return of(sum);
    }

    /** The chance of exactly so many calls. */
    public double chance(int calls) {
        return calls < chances.length ? chances[calls] : 0;
    }

    /** The chance of more calls than that. */
    public double chanceOfMoreThan(int calls) {
        double more = 0;
        for (int n = chances.length - 1; n > calls; n--) {
            more += chances[n];
        }
        return more;
    }

    /** The most calls that have a chance worth counting. */
    public int most() {
        return chances.length - 1;
    }

    /** Calls expected. */
    public double mean() {
        return moment(1);
    }

    /** Variance of the calls. */
    public double variance() {
        double mean = mean();
        return moment(2) - mean * mean;
    }

    /** Calls expected of those up to a limit: E[min(calls, limit)]. */
    public double meanUpTo(int limit) {
        double sum = 0;
        for (int n = 0; n < limit; n++) {
            sum += chanceOfMoreThan(n);
        }
        return sum;
    }

    private double moment(int power) {
        double sum = 0;
        for (int n = chances.length - 1; n > 0; n--) {
            sum += Math.pow(n, power) * chances[n];
        }
        return sum;
    }

    /** The mean of a value to the power of the calls: E[value^calls]. */
    public double generate(double value) {
        double sum = 0;
        for (int n = chances.length - 1; n >= 0; n--) {
            sum = sum * value + chances[n];
        }
        return sum;
    }
}

package icequill.oracle;

import java.util.Arrays;

/** Chances of amounts in whole cents, one by one. Sums are added up call by call. */
final class Cents {

    /** Far less than what figures may differ by. */
    private static final double NEGLIGIBLE = 1e-11;

    private final double[] chances;
    /** The amount of the first chance. */
    private final int first;

    private Cents(double[] chances, int first) {
        this.chances = chances;
        this.first = first;
    }

    /** Nothing for certain. */
    static Cents nothing() {
        return new Cents(new double[]{1}, 0);
    }

    /**
     * This and as many amounts besides as these chances say, each drawn by the shares.
     *
     * @param numbers the chances of none, one, and so on
     */
    Cents and(double[] numbers, double[] shares, int[] amounts) {
        int most = numbers.length - 1;
        while (most > 0 && numbers[most] < NEGLIGIBLE) {
            most--;
        }
        int low = 0;
        int high = 0;
        for (int amount : amounts) {
            low = Math.min(low, amount);
            high = Math.max(high, amount);
        }
        double[] sum = new double[chances.length + most * (high - low)];
        double[] next = new double[sum.length];
        int shift = -most * low;
        for (int n = most; n >= 0; n--) {
            // So many calls were added up so far, and none of them lies beyond.
            int from = shift + (most - n) * low;
            int until = shift + chances.length + (most - n) * high;
            Arrays.fill(next, from, until, 0);
            for (int k = 0; k < amounts.length; k++) {
                int amount = amounts[k];
                double share = shares[k];
                for (int x = from + amount - low; x < until + amount - high; x++) {
                    next[x] += share * sum[x - amount];
                }
            }
            for (int x = 0; x < chances.length; x++) {
                next[x + shift] += numbers[n] * chances[x];
            }
            double[] swapped = sum;
            sum = next;
            next = swapped;
        }
        return new Cents(sum, first - shift).trimmed();
    }

    private Cents trimmed() {
        int from = 0;
        int until = chances.length;
        double below = 0;
        double above = 0;
        while (from < until - 1 && below + chances[from] < NEGLIGIBLE) {
            below += chances[from++];
        }
        while (until - 1 > from && above + chances[until - 1] < NEGLIGIBLE) {
            above += chances[--until];
        }
        return new Cents(Arrays.copyOfRange(chances, from, until), first + from);
    }

    double atMost(long cents) {
        double sum = 0;
        for (int x = 0; x < chances.length && first + x <= cents; x++) {
            sum += chances[x];
        }
        return sum;
    }

    double mean() {
        double sum = 0;
        for (int x = 0; x < chances.length; x++) {
            sum += (first + (double) x) * chances[x];
        }
        return sum;
    }

    double deviation() {
        double mean = mean();
        double sum = 0;
        for (int x = 0; x < chances.length; x++) {
            sum += Math.pow(first + x - mean, 2) * chances[x];
        }
        return Math.sqrt(sum);
    }

    /** The chance that this and a fixed sum are less than another sum that does not depend on this one. */
    double chanceOfLess(long fixed, Cents other) {
        double sum = 0;
        double left = 1;
        int y = 0;
        for (int x = 0; x < chances.length; x++) {
            long own = first + x + fixed;
            while (y < other.chances.length && other.first + y <= own) {
                left -= other.chances[y++];
            }
            sum += chances[x] * Math.max(0, left);
        }
        return sum;
    }
}

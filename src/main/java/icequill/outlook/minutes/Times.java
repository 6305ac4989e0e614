package icequill.outlook.minutes;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How many times as long as planned something took.
 *
 * @param visits that say so
 * @param sure where it lies nineteen times of twenty; empty where there are too few visits to say
 */
public record Times(double times, int visits, Optional<Limits> sure) {

    /** Visits below which nothing is said for sure: of five the median lies beyond all of them once in sixteen times. */
    public static final int FEWEST = 6;
    private static final double DOUBT = 0.05;

    /** From {@code low} to {@code high}. */
    public record Limits(double low, double high) {}

    /**
     * The median of what visits took, which one forgotten departure does not move, with limits by the signs of the differences (the
     * binomial of one half; NIST/SEMATECH e-Handbook 7.2.4 has such limits for a proportion), which hold for any distribution.
     *
     * @param each at least one
     */
    static Times median(List<Double> each) {
        double[] sorted = each.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        int middle = sorted.length / 2;
        double median = sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
        int beyond = beyond(sorted.length);
        return new Times(median, sorted.length, beyond < 0
                ? Optional.empty()
                : Optional.of(new Limits(sorted[beyond], sorted[sorted.length - 1 - beyond])));
    }

    /** How many of so many visits may lie beyond either limit; negative where not even none may. */
    private static int beyond(int visits) {
        double chance = Math.pow(2, -visits);
        double sum = 0;
        int beyond = -1;
        for (int k = 0; k < visits && 2 * (sum + chance) <= DOUBT; k++) {
            sum += chance;
            chance *= (double) (visits - k) / (k + 1);
            beyond = k;
        }
        return beyond;
    }

    /** Of visits as a whole. */
    static Times of(List<VisitTime> visits) {
        return median(Arrays.stream(visits.stream().mapToDouble(VisitTime::times).toArray()).boxed().toList());
    }

    /** Whether what was planned lies beyond doubt elsewhere. */
    boolean isSurelyOff() {
        return sure.filter(limits -> limits.low() > 1 || limits.high() < 1).isPresent();
    }
}

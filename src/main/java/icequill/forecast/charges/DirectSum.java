package icequill.forecast.charges;

import icequill.forecast.charges.ChargePart.Amount;
import java.util.List;

/**
 * Adds up a sum of charges one call after another. With few calls it is faster than a transform, and nothing is lost by subtraction.
 */
final class DirectSum {

    private DirectSum() {
    }

    /**
     * The chances of 0, 1, ... steps.
     *
     * @param step in minor units, of which each amount is a multiple
     * @param points how many are wanted; what lies beyond is left out
     */
    static double[] of(List<ChargePart> parts, long step, int points) {
        double[] sum = new double[points];
        sum[0] = 1;
        int last = 0;
        for (ChargePart part : parts) {
            sum = with(sum, last, part, step);
            last = (int) Math.min(points - 1L, last + part.counts().most() * (part.most() / step));
        }
        return sum;
    }

    /** Horner's scheme: what was, if no call comes, and otherwise one charge more than what the calls after it come to. */
    private static double[] with(double[] before, int last, ChargePart part, long step) {
        double[] sum = new double[before.length];
        double[] next = new double[before.length];
        long reach = last;
        for (int calls = part.counts().most(); calls >= 0; calls--) {
            int end = (int) Math.min(before.length - 1L, reach);
            double chance = part.counts().chance(calls);
            for (int x = 0; x <= end; x++) {
                next[x] = chance * before[x];
            }
            for (Amount amount : part.amounts()) {
                int shift = (int) Math.min(before.length, amount.minor() / step);
                double share = amount.share();
                for (int x = shift; x <= end; x++) {
                    next[x] += share * sum[x - shift];
                }
            }
            double[] swapped = sum;
            sum = next;
            next = swapped;
            reach += part.most() / step;
        }
        return sum;
    }
}

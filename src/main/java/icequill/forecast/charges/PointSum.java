package icequill.forecast.charges;

import icequill.forecast.charges.ChargePart.Amount;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Adds up a sum of charges one call after another, over those sums alone that can come out. As a few calls have few kinds of charges,
 * these are far fewer than all minor units between them. Chances below {@value #NEGLIGIBLE} are left out on the way.
 */
final class PointSum {

    private static final double NEGLIGIBLE = 1e-18;
    /** With more sums, or more additions, other ways of adding up are faster. */
    private static final int MOST_POINTS = 1 << 17;
    private static final long MOST_ADDITIONS = 1L << 22;

    private final long high;
    private long[] points = {0};
    private double[] chances = {1};
    private long additions;

    private PointSum(long high) {
        this.high = high;
    }

    /** The sums up to so many minor units, in their order, and their chances; empty where there are too many. */
    static Optional<PointSum> of(List<ChargePart> parts, long high) {
        PointSum sum = new PointSum(high);
        for (ChargePart part : parts) {
            if (!sum.add(part)) {
                return Optional.empty();
            }
        }
        return Optional.of(sum);
    }

    /** In minor units, rising; the caller's own from here. */
    long[] points() {
        return points;
    }

    /** One for each point; the caller's own from here. */
    double[] chances() {
        return chances;
    }

    /** Horner's scheme: what was, if no call comes, and otherwise one charge more than what the calls after it come to. */
    private boolean add(ChargePart part) {
        long[] before = points;
        double[] beforehand = chances;
        points = new long[0];
        chances = new double[0];
        for (int calls = part.counts().most(); calls >= 0; calls--) {
            if (!merge(before, beforehand, part.counts().chance(calls), part.amounts())) {
                return false;
            }
        }
        return true;
    }

    /** One charge more on each point, and the points of before with a chance. */
    private boolean merge(long[] before, double[] beforehand, double chance, List<Amount> amounts) {
        List<Source> sources = new ArrayList<>();
        amounts.forEach(amount -> sources.add(new Source(points, chances, amount.minor(), amount.share())));
        sources.add(new Source(before, beforehand, 0, chance));
        int length = amounts.size() * points.length + before.length;
        additions += (long) length * sources.size();
        if (length > sources.size() * MOST_POINTS || additions > MOST_ADDITIONS) {
            return false;
        }
        long[] merged = new long[length];
        double[] sums = new double[length];
        int end = 0;
        Source[] all = sources.toArray(Source[]::new);
        long next = least(all);
        while (next <= high) {
            double sum = 0;
            long following = Long.MAX_VALUE;
            for (Source source : all) {
                if (source.head == next) {
                    sum += source.take();
                }
                following = Math.min(following, source.head);
            }
            if (sum > NEGLIGIBLE) {
                merged[end] = next;
                sums[end++] = sum;
            }
            next = following;
        }
        points = Arrays.copyOf(merged, end);
        chances = Arrays.copyOf(sums, end);
        return true;
    }

    private static long least(Source[] sources) {
        long least = Long.MAX_VALUE;
        for (Source source : sources) {
            least = Math.min(least, source.head);
        }
        return least;
    }

    /** Points that are all moved by an amount and have a share of their chances, from the first to the last. */
    private static final class Source {
        private final long[] points;
        private final double[] chances;
        private final long shift;
        private final double share;
        private int at;
        /** The point that comes next; beyond all others where none is left. */
        private long head;

        Source(long[] points, double[] chances, long shift, double share) {
            this.points = points;
            this.chances = chances;
            this.shift = shift;
            this.share = share;
            this.head = points.length == 0 ? Long.MAX_VALUE : points[0] + shift;
        }

        /** The chance of the point that is next. */
        double take() {
            double chance = share * chances[at++];
            head = at == points.length ? Long.MAX_VALUE : points[at] + shift;
            return chance;
        }
    }
}

package icequill.forecast;

import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.RenewalSeries;
import icequill.problem.Check;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * What cleanings and the calls that dirt causes cost together in the long run, by the months between cleanings. Random faults cost the
 * same at any interval and are left out. Amounts are minor units a year.
 */
public final class IntervalCosts {

    private static final double YEAR = 12;
    private static final double SHORTEST = 0.25;
    private static final double MOST_MONTHS = 600;
    /** Means of the slowest clock after which costs have settled. */
    private static final double SETTLED = 8;
    private static final int STEPS = 400;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int NARROWINGS = 80;
    /** A part of the cost below which a difference is one of rounding. */
    private static final double NOTHING = 1e-9;

    private final DoubleUnaryOperator aYear;
    private final double forever;
    private final double longest;
    private final Optional<Double> known;

    /**
     * A side that every cleaning renews.
     *
     * @param call what a call for it costs, in minor units, from 0
     */
    public record Side(FoulingLife clock, long call) {
        public Side {
            Check.that(call >= 0, "a call at " + call);
        }
    }

    /**
     * Costs of any law.
     *
     * @param aYear by months
     * @param forever what it tends to when nothing is ever cleaned
     * @param known the cheapest interval, where a formula gives it
     */
    IntervalCosts(DoubleUnaryOperator aYear, double forever, double longest, Optional<Double> known) {
        this.aYear = aYear;
        this.forever = forever;
        this.longest = longest;
        this.known = known;
    }

    /**
     * A call only makes the machine run again: with one clock of a shape b above 1, the best interval is
     * h (cleaning / (call (b - 1)))^(1/b).
     *
     * @param cleaning what one costs, in minor units, above 0
     */
    public static IntervalCosts restarts(long cleaning, List<Side> sides) {
        check(cleaning, sides);
        double forever = sides.stream().mapToDouble(side -> side.call() == 0 || side.clock().shape() < 1
                ? 0
                : side.clock().shape() > 1 ? Double.POSITIVE_INFINITY : side.call() * YEAR / side.clock().scale())
                .sum();
        Side first = sides.getFirst();
        double gain = first.call() * (first.clock().shape() - 1);
        Optional<Double> known = sides.size() == 1 && gain > 0
                ? Optional.of(first.clock().scale() * Math.pow(cleaning / gain, 1 / first.clock().shape()))
                : Optional.empty();
        return new IntervalCosts(months -> (cleaning
                + sides.stream().mapToDouble(side -> side.call() * side.clock().hazard(months)).sum()) * YEAR / months,
                forever, MOST_MONTHS, known);
    }

    /** A call cleans its side, and cleanings stay on their calendar: block replacement. */
    public static IntervalCosts resets(long cleaning, List<Side> sides) {
        check(cleaning, sides);
        double longest = Math.min(MOST_MONTHS,
                SETTLED * sides.stream().mapToDouble(side -> side.clock().mean()).max().orElseThrow());
        List<RenewalSeries> series = sides.stream().map(side -> RenewalSeries.of(side.clock(), longest)).toList();
        return new IntervalCosts(months -> {
            double cost = cleaning;
            for (int i = 0; i < sides.size(); i++) {
                cost += sides.get(i).call() * series.get(i).counts(0, months).mean();
            }
            return cost * YEAR / months;
        }, forever(sides), longest, Optional.empty());
    }

    private static void check(long cleaning, List<Side> sides) {
        Check.that(cleaning > 0, "a cleaning at " + cleaning);
        Check.that(!sides.isEmpty(), "no sides");
    }

    private static double forever(List<Side> sides) {
        return sides.stream().mapToDouble(side -> side.call() * YEAR / side.clock().mean()).sum();
    }

    /** Minor units a year when cleaned every so many months, rounded once. */
    public long aYear(double months) {
        Check.that(months > 0, "an interval of " + months + " months");
        return Decimals.minorUnits(aYear.applyAsDouble(months));
    }

    /** Minor units a year when never cleaned but by calls, in the long run; empty where dirt would heap up calls without end. */
    public Optional<Long> never() {
        return Double.isInfinite(forever) ? Optional.empty() : Optional.of(Decimals.minorUnits(forever));
    }

    /** The cheapest interval beside what hygiene allows at most, in months from 1. */
    public BestInterval best(int cap) {
        Check.that(cap >= 1, "a cap of " + cap + " months");
        Optional<Double> cheapest = known.or(this::found)
                .filter(months -> aYear.applyAsDouble(months) < forever * (1 - NOTHING));
        return new BestInterval(cheapest, cheapest.map(this::aYear).or(this::never).orElseThrow(), never(), cap,
                aYear(cap));
    }

    /** The best of all lowest points. */
    private Optional<Double> found() {
        double ratio = Math.pow(longest / SHORTEST, 1.0 / STEPS);
        double best = SHORTEST;
        double before = aYear.applyAsDouble(SHORTEST);
        double here = aYear.applyAsDouble(SHORTEST * ratio);
        for (int i = 1; i < STEPS; i++) {
            double month = SHORTEST * Math.pow(ratio, i);
            double next = aYear.applyAsDouble(month * ratio);
            if (here <= before && here <= next) {
                double lowest = narrowed(month / ratio, month * ratio);
                best = aYear.applyAsDouble(lowest) < aYear.applyAsDouble(best) ? lowest : best;
            }
            before = here;
            here = next;
        }
        return best == SHORTEST ? Optional.empty() : Optional.of(best);
    }

    /** Golden section. */
    private double narrowed(double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < NARROWINGS; i++) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            if (aYear.applyAsDouble(left) < aYear.applyAsDouble(right)) {
                high = right;
            } else {
                low = left;
            }
        }
        return (low + high) / 2;
    }
}

package icequill.forecast;

import icequill.problem.Check;

/** The stops of one side of a machine over a horizon. */
final class StopCounts {

    /** Below it a rest of an interval is what rounding left. */
    private static final double NOTHING = 1e-9;

    private final DirtClock clock;
    private final StopPolicy policy;
    private final double age;

    /**
     * A side of a machine.
     *
     * @param age months since it was last cleaned, at the beginning
     */
    StopCounts(DirtClock clock, StopPolicy policy, double age) {
        Check.that(age >= 0 && Double.isFinite(age), "an age of " + age + " months");
        this.clock = clock;
        this.policy = policy;
        this.age = age;
    }

    /** Stops within some months of an age. */
    @FunctionalInterface
    private interface Interval {
        Counts counts(double start, double months);
    }

    /** Over some months with a care whose last interval is cut at the end; the intervals do not depend on each other. */
    Counts over(double months, Care care) {
        double longest = Math.min(months, care.months());
        Interval interval = switch (policy) {
        case RESTARTS -> (start, length) -> Counts.poisson(clock.hazard(start + length) - clock.hazard(start));
        case RESETS -> new RenewalSeries(clock, longest)::counts;
        };
        double begins = Double.isInfinite(care.months()) ? age : left(care, age);
        if (care.months() >= months) {
            return interval.counts(begins, months);
        }
        int full = (int) Math.floor(months / care.months() + NOTHING);
        double rest = months - full * care.months();
        double again = left(care, care.months());
        Counts all = interval.counts(begins, longest).plus(interval.counts(again, longest).times(full - 1));
        return rest > NOTHING ? all.plus(interval.counts(again, rest)) : all;
    }

    /** The age that a cleaning leaves. */
    private static double left(Care care, double age) {
        return (1 - care.restores()) * age;
    }
}

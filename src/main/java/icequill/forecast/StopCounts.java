package icequill.forecast;

import icequill.problem.Check;

/** The stops of sides with one clock over a horizon, under a care whose last interval is cut at the end. */
final class StopCounts {

    /** Below it a rest of an interval is what rounding left. */
    private static final double NOTHING = 1e-9;

    private final DirtClock clock;
    private final StopPolicy policy;
    private final Interval interval;
    private final double months;
    private final Care care;

    /** More stops of one side are no forecast but a mistake in the figures. */
    private static final double MOST_RENEWALS = 300;
    private static final double MOST_RESTARTS = 1000;

    /** Stops within some months of an age. */
    @FunctionalInterface
    private interface Interval {
        Counts counts(double start, double months);
    }

    StopCounts(DirtClock clock, StopPolicy policy, double months, Care care) {
        this.clock = clock;
        this.policy = policy;
        this.months = months;
        this.care = care;
        this.interval = switch (policy) {
        case RESTARTS -> (start, length) -> Counts.poisson(clock.hazard(start + length) - clock.hazard(start));
        case RESETS -> new RenewalSeries(clock, Math.min(months, care.months()))::counts;
        };
    }

    /**
     * Of a side; the intervals do not depend on each other.
     *
     * @param age months since it was last cleaned, at the beginning
     */
    Counts of(double age) {
        Check.that(age >= 0 && Double.isFinite(age), "an age of " + age + " months");
        Check.that(!isAbsurd(clock, policy, age, months, care), "hundreds of stops of " + clock);
        double begins = Double.isInfinite(care.months()) ? age : left(care, age);
        if (care.months() >= months) {
            return interval.counts(begins, months);
        }
        int full = (int) Math.floor(months / care.months() + NOTHING);
        double rest = months - full * care.months();
        double again = left(care, care.months());
        Counts all = interval.counts(begins, care.months())
                .plus(interval.counts(again, care.months()).times(full - 1));
        return rest > NOTHING ? all.plus(interval.counts(again, rest)) : all;
    }

    /** The age that a cleaning leaves. */
    private static double left(Care care, double age) {
        return (1 - care.restores()) * age;
    }

    /** Whether so many stops would come of it that a figure must be wrong. */
    static boolean isAbsurd(DirtClock clock, StopPolicy policy, double age, double months, Care care) {
        return switch (policy) {
        case RESETS -> months / clock.mean() > MOST_RENEWALS;
        case RESTARTS -> {
            double longest = Math.min(months, care.months());
            double from = Double.isInfinite(care.months()) ? age : left(care, Math.max(age, care.months()));
            yield (clock.hazard(from + longest) - clock.hazard(from)) * Math.ceil(months / longest) > MOST_RESTARTS;
        }
        };
    }
}

package icequill.forecast.stops;

import icequill.problem.Check;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The stops of sides with one clock over a horizon, under a calendar of cleanings. */
public final class StopCounts {

    /** More stops of one side are no forecast but a mistake in the figures. */
    private static final double MOST_RENEWALS = 300;
    private static final double MOST_RESTARTS = 1000;
    /** Lengths that differ by less are one and the same. */
    private static final double SAME = 1e-9;

    private static final KeptResults<Asked, CountDistribution> KEPT = new KeptResults<>();

    private record Asked(FoulingLife clock, double cleans, Stretches stretches, double age) {}

    private final FoulingLife clock;
    private final StopPolicy policy;
    private final Stretches stretches;
    private final Stretch stretch;

    /** Stops within some months of an age, in which nothing is cleaned but by calls. */
    @FunctionalInterface
    private interface Stretch {
        CountDistribution counts(double age, double months);
    }

    /** Of machines that run all year. */
    public StopCounts(FoulingLife clock, StopPolicy policy, double months, CleaningSchedule care) {
        this(clock, policy, Stretches.of(care, Season.ALL_YEAR, months));
    }

    public StopCounts(FoulingLife clock, StopPolicy policy, Stretches stretches) {
        this.clock = clock;
        this.policy = policy;
        this.stretches = stretches;
        double longest = stretches.longest();
        this.stretch = policy.cleans() < 1 || longest == 0
                ? (age, months) -> new StopChain(clock, policy.cleans(), new Stretches(List.of(months), 0)).counts(age)
                : RenewalSeries.of(clock, longest)::counts;
    }

    /**
     * Of a side.
     *
     * @param age months since it was last cleaned, at the beginning
     */
    public CountDistribution of(double age) {
        Check.that(age >= 0 && Double.isFinite(age), "an age of " + age + " months");
        Check.that(!isAbsurd(clock, policy, age, stretches), "hundreds of stops of " + clock);
        if (policy.cleans() == 0) {
            return CountDistribution.poisson(hazard(clock, stretches, age));
        }
        return KEPT.get(new Asked(clock, policy.cleans(), stretches, age), asked -> counted(age));
    }

    private CountDistribution counted(double age) {
        if (stretches.leaves() > 0 && stretches.lengths().size() > 1) {
            return new StopChain(clock, policy.cleans(), stretches).counts(age);
        }
        Map<Long, Integer> fresh = new TreeMap<>();
        stretches.lengths().stream().skip(1).forEach(length -> fresh.merge(Math.round(length / SAME), 1, Integer::sum));
        CountDistribution all = stretch.counts(age, stretches.lengths().getFirst());
        for (Map.Entry<Long, Integer> same : fresh.entrySet()) {
            all = all.plus(stretch.counts(0, same.getKey() * SAME).times(same.getValue()));
        }
        return all;
    }

    /** Stops expected where no call cleans. */
    private static double hazard(FoulingLife clock, Stretches stretches, double age) {
        double hazard = 0;
        double begins = age;
        for (double length : stretches.lengths()) {
            hazard += clock.hazard(begins, length);
            begins = stretches.leaves() * (begins + length);
        }
        return hazard;
    }

    /** Whether so many stops would come of it that a figure must be wrong. */
    public static boolean isAbsurd(FoulingLife clock, StopPolicy policy, double age, Stretches stretches) {
        double cleans = policy.cleans();
        // Where some calls clean, 1 / cleans stops come on average until one does, and that takes longer than to the first stop.
        double renewals = stretches.months() / (clock.mean() * Math.pow(cleans, 1 - 1 / clock.shape()));
        return cleans == 1
                ? renewals > MOST_RENEWALS
                : (cleans == 0 || renewals > MOST_RENEWALS) && hazard(clock, stretches, age) > MOST_RESTARTS;
    }
}

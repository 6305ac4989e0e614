package icequill.forecast;

import icequill.forecast.stops.CleaningSchedule;
import icequill.problem.Check;
import java.util.List;

/**
 * A way of having machines looked after.
 *
 * @param planned what is paid for it in every year whatever happens, in minor units, from 0
 * @param besides what is paid besides in the first year, the second and so on, in minor units, from 0; nothing in later ones
 * @param included calls of a year that cost nothing more, from 0
 * @param water how often the side of the water is cleaned
 * @param condenser how often condensers are brushed
 * @param calls what calls cost under it
 */
public record MaintenancePolicy(long planned, List<Long> besides, int included, CleaningSchedule water,
        CleaningSchedule condenser, CallTable calls) {

    /** The same price in every year, and each call is paid for. */
    public MaintenancePolicy(long planned, CleaningSchedule water, CleaningSchedule condenser, CallTable calls) {
        this(planned, List.of(), 0, water, condenser, calls);
    }

    public MaintenancePolicy {
        besides = List.copyOf(besides);
        Check.that(planned >= 0, "a planned price of " + planned);
        Check.that(besides.stream().allMatch(amount -> amount >= 0), "paid besides: " + besides);
        Check.that(included >= 0, "included calls: " + included);
    }

    /** What is paid in a year of the horizon whatever happens, in minor units; years count from 0. */
    long plannedIn(int year) {
        return planned + (year < besides.size() ? besides.get(year) : 0);
    }

    /** The same care at other prices. */
    public MaintenancePolicy priced(long everyYear, CallTable charged) {
        return new MaintenancePolicy(everyYear, besides, included, water, condenser, charged);
    }

    /** Whether what a cause brings is cared for alike over some months. */
    boolean caresLike(MaintenancePolicy other, Cause cause, double months) {
        return switch (cause) {
        case RANDOM -> true;
        case CONDENSER -> alike(condenser, other.condenser, months);
        case WATER -> alike(water, other.water, months);
        };
    }

    private static boolean alike(CleaningSchedule one, CleaningSchedule other, double months) {
        return one.until(months).equals(other.until(months)) && one.restores() == other.restores();
    }
}

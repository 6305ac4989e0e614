package icequill.plans;

import icequill.document.PlanYear.MinutesFrom;
import icequill.planner.Timetable;
import icequill.pricer.StaffedVisit;
import java.util.Optional;

/**
 * A visit with its crew, and where its minutes come from.
 *
 * @param timetable by which the minutes were found; empty where they come from elsewhere
 */
record TimedVisit(StaffedVisit staffed, MinutesFrom from, Optional<Timetable> timetable) {

    /** By how many minutes the visit, and with it the price, may be too long; 0 where that cannot be said. */
    int perhapsTooLong() {
        return timetable.map(Timetable::gap).orElse(0);
    }
}

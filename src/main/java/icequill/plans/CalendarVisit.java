package icequill.plans;

import icequill.agreement.PlannedVisit;
import icequill.pricer.StaffedVisit;
import java.util.List;
import java.util.Set;

/**
 * A visit of an agreement's calendar, as it is to be made.
 *
 * @param machines that are looked after on its day, by id
 * @param crew who comes, and for how long; nobody where that was never planned
 */
public record CalendarVisit(PlannedVisit visit, Set<String> machines, List<StaffedVisit.Person> crew) {

    public CalendarVisit {
        machines = Set.copyOf(machines);
        crew = List.copyOf(crew);
    }
}

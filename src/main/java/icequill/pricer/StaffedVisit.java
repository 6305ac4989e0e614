package icequill.pricer;

import icequill.agreement.PlannedVisit;
import icequill.work.VisitLine.ModifierApplied;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * A visit of an agreement's calendar with the work it takes.
 *
 * @param crew who comes, and for how long
 * @param modifiers that apply
 * @param arrive the hour asked for; empty for the one that costs least
 */
public record StaffedVisit(PlannedVisit visit, List<Person> crew, List<ModifierApplied> modifiers,
        Optional<LocalTime> arrive) {

    /**
     * One person's time.
     *
     * @param grade as the labor rates name it
     * @param minutes planned at the site, from 1
     */
    public record Person(String grade, int minutes) {}

    public StaffedVisit {
        crew = List.copyOf(crew);
        modifiers = List.copyOf(modifiers);
    }
}

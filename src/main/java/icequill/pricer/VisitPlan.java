package icequill.pricer;

import icequill.agreement.PlannedVisit;
import icequill.work.VisitLine.ModifierApplied;
import java.util.List;

/**
 * A visit of an agreement's calendar with the work it takes.
 *
 * @param crew who comes, and for how long
 * @param modifiers that apply
 */
public record VisitPlan(PlannedVisit visit, List<Person> crew, List<ModifierApplied> modifiers) {

    /**
     * One person's time.
     *
     * @param grade as the labor rates name it
     * @param minutes planned at the site, from 1
     */
    public record Person(String grade, int minutes) {}

    public VisitPlan {
        crew = List.copyOf(crew);
        modifiers = List.copyOf(modifiers);
    }
}

package icequill.document;

import icequill.agreement.Billing;
import icequill.agreement.Term;
import icequill.pricer.CallReserve;
import icequill.problem.Place;
import icequill.work.Visit;
import java.util.List;
import java.util.Optional;

/**
 * Which machines are looked after, how long, and with what work.
 *
 * @param site by id
 * @param machines by id; empty for all of the site
 * @param billing empty where each visit is billed when it is done
 * @param reserve what is expected of the calls that a tier includes
 */
public record PlanScope(String site, List<Visit.Named> machines, Term term, Optional<Billing> billing, PlannedWork work,
        Optional<CallReserve> reserve, Place place) {

    public PlanScope {
        machines = List.copyOf(machines);
    }
}

package icequill.request;

import icequill.agreement.Billing;
import icequill.agreement.Term;
import icequill.party.Circumstance;
import icequill.pricer.CallReserve;
import icequill.problem.Place;
import icequill.work.Visit;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which machines are looked after, how long, and with what work.
 *
 * @param site by id
 * @param machines by id; empty for all of the site
 * @param billing empty where each visit is billed when it is done
 * @param reserve what is expected of the calls that a tier includes
 * @param circumstances besides those of the site
 * @param arrive the hour at which visits are asked for; empty for the one that costs least
 */
public record PlanScope(String site, List<Visit.Named> machines, Term term, Optional<Billing> billing, PlannedWork work,
        Optional<CallReserve> reserve, List<Circumstance> circumstances, Optional<LocalTime> arrive, Place place) {

    public PlanScope {
        machines = List.copyOf(machines);
        circumstances = List.copyOf(circumstances);
    }

    /** The same with other minutes at the site, by the id of the scope. */
    public PlanScope withMinutes(Map<String, Integer> minutes) {
        return new PlanScope(site, machines, term, billing, new PlannedWork(work.crew(), minutes, work.place()),
                reserve, circumstances, arrive, place);
    }

    /** The same with what is expected of included calls. */
    public PlanScope withReserve(CallReserve expected) {
        return new PlanScope(site, machines, term, billing, work, Optional.of(expected), circumstances, arrive, place);
    }

    /**
     * The same term and billing at another site.
     *
     * @param others its machines, empty for all of it
     */
    PlanScope at(String other, List<Visit.Named> others) {
        return new PlanScope(other, others, term, billing, new PlannedWork(List.of(), Map.of(), place),
                Optional.empty(), List.of(), Optional.empty(), place);
    }

    /** The same for another term. */
    public PlanScope over(Term other) {
        return new PlanScope(site, machines, other, billing, work, reserve, circumstances, arrive, place);
    }
}

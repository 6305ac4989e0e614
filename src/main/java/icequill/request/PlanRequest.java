package icequill.request;

import icequill.work.Visit;
import java.util.List;
import java.util.Optional;

/**
 * What a maintenance quote is asked for.
 *
 * @param tiers by id; empty for all
 * @param holdsDays how many days the prices hold
 * @param customerEmptiesBin before each visit; otherwise the technician does
 * @param annex whether the quote shows how every price was figured
 * @param survey of the machines' condition, if there was one
 * @param calls that the site had, for a comparison
 */
public record PlanRequest(PlanScope scope, List<Visit.Named> tiers, int holdsDays, boolean customerEmptiesBin,
        boolean annex,
        Optional<Survey> survey, Optional<CallHistory> calls) {

    public PlanRequest {
        tiers = List.copyOf(tiers);
    }
}

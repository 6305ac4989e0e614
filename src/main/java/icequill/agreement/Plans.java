package icequill.agreement;

import java.util.List;
import java.util.Optional;

/**
 * The maintenance plans of a day.
 *
 * @param scopes what visits may consist of, whether a tier has such a visit or not
 * @param catchUps what a survey of a machine may find
 * @param filters empty where filters are not part of any plan
 */
public record Plans(List<Scope> scopes, List<Tier> tiers, List<CatchUp> catchUps, Optional<FilterRule> filters,
        FlatPrices flat, IntervalRules interval) {

    public Plans {
        scopes = List.copyOf(scopes);
        tiers = List.copyOf(tiers);
        catchUps = List.copyOf(catchUps);
    }

    public Optional<CatchUp> catchUp(String id) {
        return catchUps.stream().filter(catchUp -> catchUp.id().equals(id)).findFirst();
    }

    public Optional<Tier> tier(String id) {
        return tiers.stream().filter(tier -> tier.id().equals(id)).findFirst();
    }
}

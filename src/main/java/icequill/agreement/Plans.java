package icequill.agreement;

import java.util.List;
import java.util.Optional;

/**
 * The maintenance plans of a day.
 *
 * @param filters empty where filters are not part of any plan
 */
public record Plans(List<Tier> tiers, Optional<FilterRule> filters, IntervalRules interval) {

    public Plans {
        tiers = List.copyOf(tiers);
    }

    public Optional<Tier> tier(String id) {
        return tiers.stream().filter(tier -> tier.id().equals(id)).findFirst();
    }
}

package icequill.plans;

import icequill.agreement.Tier;
import icequill.money.Amounts;
import icequill.pricer.CallReserve;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Prices tiers for a site, those too that include calls.
 *
 * @param ahead what forecasts included calls; empty where the shop has nothing to forecast by
 */
public record TierPricing(Optional<ReserveAhead> ahead) {

    /** The plan, or what is in the way: where a tier includes calls, that nothing says what to expect of them. */
    Validated<PricedPlan> of(PlanSetting setting, Tier tier) {
        return isForecast(setting, tier)
                ? PricedPlan.of(setting.withReserve(nothing(setting)), tier)
                        .then(plan -> ahead.orElseThrow().of(plan).map(plan::with))
                : PricedPlan.of(setting, tier);
    }

    /** Whether a tier includes calls of which nobody said what to expect, but which can be forecast. */
    private boolean isForecast(PlanSetting setting, Tier tier) {
        return tier.included().number() > 0 && setting.scope().reserve().isEmpty() && ahead.isPresent();
    }

    /** Whether nothing says what to expect of the calls that a tier includes. */
    boolean knowsTooLittleOf(PlanSetting setting, Tier tier) {
        return tier.included().number() > 0 && setting.scope().reserve().isEmpty() && ahead.isEmpty();
    }

    private static CallReserve nothing(PlanSetting setting) {
        MonetaryAmount zero = Amounts.zero(setting.rates().currency());
        return new CallReserve(BigDecimal.ZERO, zero, zero);
    }
}

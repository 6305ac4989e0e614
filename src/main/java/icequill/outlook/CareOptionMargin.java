package icequill.outlook;

import icequill.forecast.Cause;
import icequill.forecast.Forecast;
import icequill.money.Amounts;
import icequill.money.MinorUnits;
import icequill.pricer.AgreementMargin;
import icequill.pricer.PricedSlot;
import java.util.List;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** What the shop earns on a way of care in its first year. The owner's alone. */
record CareOptionMargin(SiteForecast forecast) {

    private static final double TEN = 10;

    /** What is earned on planned visits in a year. */
    MonetaryAmount ofPlan(CareOption way) {
        return way.plan().map(plan -> switch (way.kind()) {
        case AGREEMENT -> AgreementMargin.of(plan.year()).margin();
        case PAY_PER_CALL -> Amounts.zero(forecast.currency());
        case BOOKED_SINGLY -> way.planned().subtract(cost(plan.year().slots()));
        case INTERVAL -> forecast.amount(MinorUnits.of(way.planned())
                - MinorUnits.of(cost(plan.year().slots())) * MinorUnits.of(way.planned())
                        / (double) Math.max(1, MinorUnits.of(plan.year().list())));
        }).orElseGet(() -> Amounts.zero(forecast.currency()));
    }

    /** What is earned on catching up, once. */
    static MonetaryAmount ofCatchUp(CareOption way) {
        return way.catchUp().price().subtract(way.catchUp().cost());
    }

    private MonetaryAmount cost(List<PricedSlot> slots) {
        return Amounts.sum(slots.stream().map(slot -> slot.priced().cost()).toList(), forecast.currency());
    }

    /** What is earned on the calls expected in the first year. */
    MonetaryAmount ofCalls(CareOption way) {
        Forecast found = forecast.forecast(way, 1);
        double scale = Math.pow(TEN, forecast.currency().getDefaultFractionDigits());
        return forecast.amount(Stream.of(Cause.values()).mapToDouble(cause -> found.calls(cause).mean()
                * (way.charges().meanCharge(cause) - scale * way.charges().meanCost(cause))).sum());
    }
}

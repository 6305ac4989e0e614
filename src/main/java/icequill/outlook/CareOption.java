package icequill.outlook;

import icequill.document.CareOptionKind;
import icequill.forecast.MaintenancePolicy;
import icequill.money.MinorUnits;
import icequill.party.Wording;
import icequill.plans.CareOfSides;
import icequill.plans.CatchUpAmounts;
import icequill.plans.ExpectedCharges;
import icequill.plans.PricedPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A way of having a site's machines looked after.
 *
 * @param key by which programs know it
 * @param planned price of the first year, without catching up; zero where nothing is planned
 * @param later prices of the years after it, one after another and nothing beyond; empty where each year costs the same
 * @param catchUp of neglected machines on the first visit
 * @param care the real calendar of its cleanings and brushings
 * @param charges what its calls cost
 * @param included calls of a year that its price includes
 * @param plan whose visits these are; empty where nothing is planned
 */
public record CareOption(String key, CareOptionKind kind, Optional<Wording> name, MonetaryAmount planned,
        Optional<List<MonetaryAmount>> later, CatchUpAmounts catchUp, CareOfSides care,
        ExpectedCharges.Charges charges, int included, Optional<PricedPlan> plan) {

    /** What is paid in the first year whatever happens. */
    MonetaryAmount firstYear() {
        return planned.add(catchUp.price());
    }

    /** As the forecast takes it. */
    MaintenancePolicy choice() {
        List<Long> besides = new ArrayList<>();
        besides.add(MinorUnits.of(later.isPresent() ? firstYear() : catchUp.price()));
        later.ifPresent(years -> years.forEach(price -> besides.add(MinorUnits.of(price))));
        return new MaintenancePolicy(later.isPresent() ? 0 : MinorUnits.of(planned), besides, included, care.water(),
                care.condenser(), charges.table());
    }
}

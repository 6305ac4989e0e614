package icequill.outlook;

import icequill.forecast.effects.EnergyLimits;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.SiteVisits;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.rates.Rates;
import icequill.request.BrushingRequest;
import java.util.Optional;

/**
 * All that goes into a brushing sheet.
 *
 * @param expected what calls are forecast by; empty where the shop does not say
 * @param book what the shop's own visits say of the site; empty where there were none
 */
public record BrushingCase(Shop shop, Site site, Rates rates, BrushingRequest request,
        Optional<ForecastRates> expected,
        EnergyLimits limits, Optional<SiteVisits> book) {}

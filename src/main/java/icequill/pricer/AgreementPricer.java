package icequill.pricer;

import icequill.agreement.Reach;
import icequill.agreement.Tier;
import icequill.party.Site;
import icequill.problem.Check;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Prices a year of an agreement. Stateless: the same tier, visits, site and rates give the same price. */
public final class AgreementPricer {

    private AgreementPricer() {
    }

    /**
     * The price of a year: each visit as {@link Pricer} prices it, at the hour that costs least of those at which the site
     * lets us in, or the one asked for, with the doses and
     * due filters of every machine of the site, summed and rounded as {@link PricedAgreement} says.
     *
     * @param reach of the whole agreement, of which this may be one site
     * @param visits of a year, at least one, each with somebody who comes
     * @param calls what is expected of included calls; needed when the tier includes any, of no account otherwise
     * @param site with those machines that the agreement is for
     * @param rates of the day of the quote
     * @param zone of the shop
     * @return a problem for each name that the site or the rates do not know, and when the calls are missing
     */
    public static Validated<PricedAgreement> price(Tier tier, Reach reach, List<StaffedVisit> visits,
            Optional<CallReserve> calls, Site site, Rates rates, ZoneId zone) {
        Check.that(!visits.isEmpty(), "an agreement without visits");
        Problems problems = new Problems();
        boolean included = tier.included().number() > 0;
        if (included && calls.isEmpty()) {
            problems.add(new Problem(Code.MISSING, tier.place(),
                    "the tier \"" + tier.id()
                            + "\" includes calls, but nothing says how many to expect and at what charge",
                    "a forecast of calls, or a tier without included calls"));
        }
        SlotVisit slotVisit = new SlotVisit(site, rates.withoutAgreedDiscounts(), zone, false);
        List<PricedSlot> slots = new ArrayList<>();
        for (StaffedVisit staffed : visits) {
            problems.take(slotVisit.cheapest(staffed, List.of())).ifPresent(slots::add);
        }
        return problems.or(() -> new YearPricing(tier, reach, rates.agreed().discounts(), rates.currency()).price(slots,
                slots.stream().map(slot -> slot.priced().net()).toList(), included ? calls : Optional.empty()));
    }

    /** The same year with what its included calls are expected to cost. */
    public static PricedAgreement with(PricedAgreement year, CallReserve calls) {
        return new YearPricing(year.tier(), year.reach(), year.sheets(), year.list().getCurrency()).price(year.slots(),
                year.slots().stream().map(slot -> slot.priced().net()).toList(), Optional.of(calls));
    }

    /**
     * One visit of a plan with more work than its scope, at list and by its time, since flat prices are for the scope alone.
     *
     * @param extra at machines and of tasks that the site and the rates know
     */
    public static Validated<PricedSlot> visit(StaffedVisit staffed, List<ExtraWork> extra, Site site, Rates rates,
            ZoneId zone) {
        return new SlotVisit(site, rates.withoutAgreedDiscounts(), zone, true).cheapest(staffed, extra);
    }
}

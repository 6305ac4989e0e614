package icequill.rates;

import icequill.money.Percent;
import icequill.party.Site;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.work.ChargeClass;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.MonetaryAmount;

/**
 * Prices agreed with somebody, which lie over the shop's. What it does not say is the shop's.
 *
 * @param name whose prices they are
 * @param sites by id
 * @param accounts customers, or accounts that they belong to, by id
 * @param prices of materials, for one unit or one pack, by id
 * @param includes minutes that the service call pays for
 * @param discount off each class
 * @param without fees and surcharges of every visit that are not charged here, by id
 * @param earlyPayment instead of the shop's terms
 */
public record RateSheet(String id, Wording name, Set<String> sites, Set<String> accounts, List<Labor> labor,
        List<ServiceCall> serviceCalls, Map<String, MonetaryAmount> prices, Optional<Integer> includes,
        Map<ChargeClass, Percent> discount, Set<String> without, Optional<EarlyPaymentTerms> earlyPayment,
        Place place) {

    /**
     * Prices of a grade, for the bands that are named.
     *
     * @param firstHour of each visit; where only the hour's price is agreed, the first hour costs what others do
     * @param minimum minutes billed at least
     */
    public record Labor(String grade, Map<String, MonetaryAmount> hourly, Map<String, MonetaryAmount> firstHour,
            Map<String, Integer> minimum, Place place) {
        public Labor {
            hourly = Map.copyOf(hourly);
            firstHour = Map.copyOf(firstHour);
            minimum = Map.copyOf(minimum);
        }
    }

    /** Prices of a zone, for the bands that are named. */
    public record ServiceCall(String zone, Map<String, MonetaryAmount> prices, Place place) {
        public ServiceCall {
            prices = Map.copyOf(prices);
        }
    }

    public RateSheet {
        sites = Set.copyOf(sites);
        accounts = Set.copyOf(accounts);
        labor = List.copyOf(labor);
        serviceCalls = List.copyOf(serviceCalls);
        prices = Map.copyOf(prices);
        discount = Map.copyOf(discount);
        without = Set.copyOf(without);
    }

    /** How near it is to a site: 0 for its own, 1 for its customer's, more for the accounts above; empty where it is not for it. */
    Optional<Integer> distance(Site site) {
        if (sites.contains(site.id())) {
            return Optional.of(0);
        }
        for (int i = 0; i < site.accounts().size(); i++) {
            if (accounts.contains(site.accounts().get(i))) {
                return Optional.of(i + 1);
            }
        }
        return Optional.empty();
    }
}

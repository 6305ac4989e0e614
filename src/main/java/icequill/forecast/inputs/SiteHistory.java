package icequill.forecast.inputs;

import icequill.work.Visit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a forecast for a site goes by, besides what the shop expects of any machine.
 *
 * @param machines those of which it is known when they were cleaned
 * @param visits of the last twelve months by which the number of calls is known; empty when nobody counted
 * @param ownCosts of a stop, as the customer figures them; empty when he did not say
 * @param book what the shop's own visits say, behind what is said otherwise; empty when there were none
 */
public record SiteHistory(List<Care> machines, Optional<Integer> visits, ForecastRates.Assumed assumed,
        Optional<OwnCosts> ownCosts, Optional<SiteVisits> book) {

    /** Nothing is known of the site. */
    public static final SiteHistory UNKNOWN = new SiteHistory(List.of(), Optional.empty(),
            ForecastRates.Assumed.NOTHING, Optional.empty(), Optional.empty());

    /**
     * When a machine was last looked after, and what its plate says.
     *
     * @param cleaned empty when nobody knows
     * @param brushed of its condenser; empty for the last full cleaning
     * @param nameplate kWh for 100 lb of ice when clean; empty for what the law allowed
     */
    public record Care(Visit.Named machine, Optional<LocalDate> cleaned, Optional<LocalDate> brushed,
            Optional<BigDecimal> nameplate) {}

    public SiteHistory {
        machines = List.copyOf(machines);
    }

    /** The same where the shop's own visits are known. */
    public SiteHistory with(Optional<SiteVisits> visits) {
        return new SiteHistory(machines, this.visits, assumed, ownCosts, visits);
    }

    /** Of one machine, by its id. */
    public Optional<Care> of(String machine) {
        return machines.stream().filter(care -> care.machine().id().equals(machine)).findFirst();
    }
}

package icequill.forecast.inputs;

import icequill.money.Percent;
import icequill.party.SiteKind;
import icequill.problem.Place;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

/**
 * What a shop expects of machines, by which calls are forecast.
 *
 * @param faults of one machine in a year that no cleaning prevents
 * @param condenser of machines cooled by air
 * @param water the side of the water: scale, slime
 * @param kinds by id: what is known of some kinds of sites, in place of what is expected of all
 * @param seasons in which quarters of a year stops come more often
 * @param callsThatClean percent of the calls for dirt whose work cleans the side they were for; the others only make the machine run
 *        again
 * @param sitesDiffer standard deviation, as a percentage of what is guessed, of how often machines stop at one site and another;
 *        the machines of one site share it
 * @param unknownMonths since the last cleaning where nobody knows
 * @param years that a sheet looks ahead, from 1
 * @param later how amounts of later years are counted
 * @param roundTo what money is rounded to on a customer's sheet
 */
public record ForecastRates(Estimate faults, FoulingEstimate condenser, FoulingEstimate water,
        Map<String, KindDirt> kinds,
        SiteFactors factors, StopSeasons seasons, Percent cleaningRestores, Percent brushingRestores,
        Percent callsThatClean,
        Estimate sitesDiffer, BigDecimal unknownMonths, int years, LaterYears later,
        BigDecimal roundTo,
        Calls calls, NonCashEffects beside, Place place) {

    /** Machines of one site stop without regard to each other. */
    public static final Estimate SITES_ALIKE = new Estimate(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO,
            Origin.ESTIMATE);

    public ForecastRates {
        kinds = Map.copyOf(kinds);
    }

    /** How soon dirt stops machines at a kind of site, where nothing there makes it work faster. */
    public record KindDirt(Optional<FoulingEstimate> condenser, Optional<FoulingEstimate> water) {}

    /** The same with what is known of a kind of site. */
    public ForecastRates at(SiteKind kind) {
        return Optional.ofNullable(kinds.get(kind.id()))
                .map(known -> with(faults, known.condenser().orElse(condenser), known.water().orElse(water)))
                .orElse(this);
    }

    /** Kinds of calls by their cause. */
    public record Calls(ExpectedCalls random, ExpectedCalls condenser, ExpectedCalls water) {

        Calls withShareOf(String band, BigDecimal factor) {
            return new Calls(random.withShareOf(band, factor), condenser.withShareOf(band, factor),
                    water.withShareOf(band, factor));
        }
    }

    /** Figures for one site in place of the shop's. */
    public record Assumed(Optional<Estimate> faults, Optional<FoulingEstimate> condenser,
            Optional<FoulingEstimate> water,
            Optional<Estimate> iceUsed, Optional<NonCashEffects.Known> electricity, Optional<NonCashEffects.Bag> bag,
            Optional<NonCashEffects.Known> machine, Optional<NonCashEffects.Lives> lives) {

        public static final Assumed NOTHING = new Assumed(Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The same with what is assumed for one site. */
    public ForecastRates with(Assumed site) {
        NonCashEffects other = new NonCashEffects(site.iceUsed().orElse(beside.iceUsed()),
                site.electricity().orElse(beside.electricity()), site.bag().orElse(beside.bag()), beside.hoursDown(),
                beside.water(),
                site.machine().orElse(beside.machine()), site.lives().orElse(beside.lives()), beside.interest());
        return new ForecastRates(site.faults().orElse(faults), site.condenser().orElse(condenser),
                site.water().orElse(water), kinds, factors, seasons, cleaningRestores, brushingRestores, callsThatClean,
                sitesDiffer, unknownMonths,
                years, later, roundTo, calls, other, place);
    }

    /** The same with other guesses. */
    public ForecastRates with(Estimate otherFaults, FoulingEstimate otherCondenser, FoulingEstimate otherWater) {
        return new ForecastRates(otherFaults, otherCondenser, otherWater, kinds, factors, seasons, cleaningRestores,
                brushingRestores,
                callsThatClean, sitesDiffer, unknownMonths, years, later, roundTo, calls, beside, place);
    }

    /** The same where so many of the calls for dirt clean their side. */
    public ForecastRates withCallsThatClean(Percent part) {
        return new ForecastRates(faults, condenser, water, kinds, factors, seasons, cleaningRestores, brushingRestores,
                part,
                sitesDiffer, unknownMonths, years, later, roundTo, calls, beside, place);
    }

    /** The same where a cleaning, and a brushing, takes away so much of the dirt's age. */
    public ForecastRates withRestores(Percent part) {
        return new ForecastRates(faults, condenser, water, kinds, factors, seasons, part, part, callsThatClean,
                sitesDiffer,
                unknownMonths,
                years, later, roundTo, calls, beside, place);
    }

    /** The same where sites are surely by so much worse or better. */
    public ForecastRates withSitesDiffer(BigDecimal percent) {
        return new ForecastRates(faults, condenser, water, kinds, factors, seasons, cleaningRestores, brushingRestores,
                callsThatClean, new Estimate(percent, percent, percent, sitesDiffer.origin()), unknownMonths, years,
                later,
                roundTo, calls, beside, place);
    }

    /** The same where so many times as many calls come in a labor band, all of them at most, and the others fewer in proportion. */
    public ForecastRates withShareOf(String band, BigDecimal factor) {
        return new ForecastRates(faults, condenser, water, kinds, factors, seasons, cleaningRestores, brushingRestores,
                callsThatClean, sitesDiffer, unknownMonths, years, later, roundTo, calls.withShareOf(band, factor),
                beside, place);
    }
}

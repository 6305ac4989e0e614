package icequill.answer.forecast;

import icequill.forecast.Cause;
import icequill.outlook.SiteForecast;
import icequill.plans.SideCare;
import icequill.plans.SiteRisks;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * How old the dirt of a machine is. Where the last work did not take all of it away, it is older than that work.
 *
 * @param machine by id
 * @param lastCleaned as the record has it, a day or a month; missing where nobody knows
 * @param lastBrushed and all that follows: only of a machine that is brushed
 * @param nameplate where its power is known
 */
public record MachineAge(String machine, Optional<String> lastCleaned, BigDecimal monthsSinceCleaned,
        BigDecimal monthsOfDirtInWater, Optional<String> lastBrushed, Optional<BigDecimal> monthsSinceBrushed,
        Optional<BigDecimal> monthsOfDirtOnCondenser, Optional<BigDecimal> nameplate) {

    static MachineAge of(SiteForecast forecast, SiteRisks.Since since) {
        SideCare water = forecast.risks().care(since, Cause.WATER);
        Optional<SideCare> condenser = Optional.of(since.machine()).filter(SiteRisks::isBrushed)
                .map(brushed -> forecast.risks().care(since, Cause.CONDENSER));
        return new MachineAge(since.machine().id(), since.cleaned().map(String::valueOf), age(forecast, water),
                dirt(forecast, water), condenser.flatMap(side -> since.brushed().map(String::valueOf)),
                condenser.map(side -> age(forecast, side)), condenser.map(side -> dirt(forecast, side)),
                condenser.flatMap(side -> forecast.risks().history().of(since.machine().id())
                        .flatMap(care -> care.nameplate())));
    }

    private static BigDecimal age(SiteForecast forecast, SideCare side) {
        return SixDecimals.of(side.sinceLast(forecast.risks().day()));
    }

    private static BigDecimal dirt(SiteForecast forecast, SideCare side) {
        return SixDecimals.of(side.after(forecast.risks().day()));
    }
}

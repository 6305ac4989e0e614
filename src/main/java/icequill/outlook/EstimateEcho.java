package icequill.outlook;

import icequill.document.Outlook;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.Cause;
import icequill.forecast.Decimals;
import icequill.forecast.Forecast;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.inputs.Origin;
import icequill.forecast.stops.MachineRisk;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Plays back what guesses of dirt come to at a site, in machines of the twenty by which they were guessed. */
public record EstimateEcho(SiteForecast forecast) {

    private static final int HALF_A_YEAR = 6;
    private static final int YEAR = 12;

    /**
     * Of twenty machines like the site's, all clean at the beginning, how many stop for dirt on one side.
     *
     * @param bySix by month 6 where nobody cleans them, at the pace at which dirt works at the site
     * @param byTwelve the same by month 12
     * @param cared by month 12 on the plan that is recommended
     */
    public record Stopped(Cause cause, BigDecimal bySix, BigDecimal byTwelve, BigDecimal cared, Origin origin) {

        /** In a sentence, with who says what it was worked out from. */
        public Outlook.Input said() {
            return new Outlook.Input(Phrase.of(cause == Cause.WATER ? "outlook.echo.water" : "outlook.echo.condenser",
                    Fact.number(FoulingEstimate.Stops.OF, ""), new Fact.Measure(bySix, ""),
                    new Fact.Measure(byTwelve, ""), new Fact.Measure(cared, "")), InputsAssembly.origin(origin));
        }
    }

    /** One for each side that the site's machines have. */
    public List<Stopped> sides() {
        List<Stopped> sides = new ArrayList<>();
        forecast.risks().machines().stream().filter(machine -> machine.condenser().isPresent()).findFirst()
                .ifPresent(machine -> sides
                        .add(stopped(Cause.CONDENSER, machine, forecast.rates().condenser().origin())));
        sides.add(stopped(Cause.WATER, forecast.risks().machines().getFirst(), forecast.rates().water().origin()));
        return sides;
    }

    private Stopped stopped(Cause cause, MachineRisk machine, Origin origin) {
        MachineRisk clean = new MachineRisk(machine.randomAYear(), machine.condenser(), 0, machine.water(), 0,
                machine.seasons());
        return new Stopped(cause, part(cause, clean, forecast.payPerCall(), HALF_A_YEAR),
                part(cause, clean, forecast.payPerCall(), YEAR), part(cause, clean, forecast.recommended(), YEAR),
                origin);
    }

    private BigDecimal part(Cause cause, MachineRisk machine, CareOption way, int months) {
        double none = Forecast.of(List.of(machine), way.choice(), forecast.risks().policy(), months).calls(cause)
                .chance(0);
        return Decimals.of(FoulingEstimate.Stops.OF * (1 - none), 1);
    }
}

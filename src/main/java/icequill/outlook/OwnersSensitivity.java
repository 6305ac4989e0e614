package icequill.outlook;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.PolicyComparison;
import icequill.forecast.Sensitivity;
import icequill.forecast.effects.Assumption;
import icequill.forecast.inputs.Estimate;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.stops.MachineRisk;
import icequill.money.Percent;
import icequill.plans.EstimateLevels;
import icequill.work.Band;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Finds which estimates move most what the recommended plan saves in the first year. */
record OwnersSensitivity(SiteForecast forecast) {

    /** Months since the last cleaning and brushing are supposed to be known to a factor of two, charges to a fifth. */
    private static final double HALF = 0.5;
    private static final double DOUBLE = 2;
    /** What a cleaning may leave: our estimate. */
    private static final Percent RESTORES_LITTLE = Percent.of("70");
    private static final double A_FIFTH_LESS = 0.8;
    private static final double A_FIFTH_MORE = 1.2;

    /** By how much the recommended plan is expected to be cheaper than paying per call in the first year. */
    private PolicyComparison comparison(List<MachineRisk> machines) {
        return forecast.comparison(forecast.recommended(), machines);
    }

    Sensitivity<Phrase> sensitivity() {
        ForecastRates rates = forecast.rates();
        PolicyComparison usual = comparison(forecast.risks().machines());
        List<Sensitivity.ParameterRange<Phrase>> ranges = new ArrayList<>();
        ranges.add(range(Phrase.of("mine.swing.faults", measure(rates.faults(), Estimate::low),
                measure(rates.faults(), Estimate::high)),
                level -> new EstimateLevels(level, EstimateLevels.Level.USUAL, EstimateLevels.Level.USUAL)));
        if (forecast.risks().hasCondensers()) {
            ranges.add(range(dirt("mine.swing.condenser", rates.condenser()),
                    level -> new EstimateLevels(EstimateLevels.Level.USUAL, level, EstimateLevels.Level.USUAL)));
        }
        ranges.add(range(dirt("mine.swing.water", rates.water()),
                level -> new EstimateLevels(EstimateLevels.Level.USUAL, EstimateLevels.Level.USUAL, level)));
        ranges.add(
                new Sensitivity.ParameterRange<>(Phrase.of("mine.swing.run"), Assumption.MONTHS_RUN.times(HALF, usual),
                        Assumption.MONTHS_RUN.times(DOUBLE, usual)));
        ranges.add(new Sensitivity.ParameterRange<>(Phrase.of("mine.swing.charges"),
                Assumption.CALL_CHARGES.times(A_FIFTH_LESS, usual),
                Assumption.CALL_CHARGES.times(A_FIFTH_MORE, usual)));
        ranges.add(range(Phrase.of("mine.swing.cleans"), rates.withCallsThatClean(Percent.ZERO),
                rates.withCallsThatClean(Percent.HUNDRED)));
        ranges.add(range(Phrase.of("mine.swing.restores", new Fact.Part(RESTORES_LITTLE)),
                rates.withRestores(RESTORES_LITTLE), rates.withRestores(Percent.HUNDRED)));
        Estimate differ = rates.sitesDiffer();
        if (differ.high().signum() > 0) {
            ranges.add(range(
                    Phrase.of("mine.swing.sites", measure(differ, Estimate::low), measure(differ, Estimate::high)),
                    rates.withSitesDiffer(differ.low()), rates.withSitesDiffer(differ.high())));
        }
        sundays().ifPresent(band -> ranges
                .add(range(Phrase.of("mine.swing.band", band.name().named()),
                        rates.withShareOf(band.id(), BigDecimal.ZERO), rates.withShareOf(band.id(), BigDecimal.TWO))));
        return Sensitivity.of(usual, ranges);
    }

    private static Fact measure(Estimate guess, Function<Estimate, BigDecimal> which) {
        return new Fact.Measure(which.apply(guess), "");
    }

    private static Phrase dirt(String key, FoulingEstimate dirt) {
        return Phrase.of(key, new Fact.Measure(dirt.low().byTwelve(), ""), new Fact.Measure(dirt.high().byTwelve(), ""),
                Fact.number(FoulingEstimate.Stops.OF, ""));
    }

    private Sensitivity.ParameterRange<Phrase> range(Phrase what,
            Function<EstimateLevels.Level, EstimateLevels> levels) {
        return new Sensitivity.ParameterRange<>(what,
                comparison(forecast.risks().machines(levels.apply(EstimateLevels.Level.LOW))),
                comparison(forecast.risks().machines(levels.apply(EstimateLevels.Level.HIGH))));
    }

    private Sensitivity.ParameterRange<Phrase> range(Phrase what, ForecastRates low, ForecastRates high) {
        return new Sensitivity.ParameterRange<>(what, comparison(forecast.with(low)), comparison(forecast.with(high)));
    }

    private static PolicyComparison comparison(SiteForecast other) {
        return other.comparison(other.recommended(), other.risks().machines());
    }

    /** The band of a Sunday noon. */
    private Optional<Band> sundays() {
        ZonedDateTime noon = forecast.risks().day().with(TemporalAdjusters.next(DayOfWeek.SUNDAY))
                .atTime(LocalTime.NOON)
                .atZone(forecast.hand().setting().shop().zone());
        return forecast.hand().setting().rates().labor().week().split(noon, noon.plusHours(1)).stream()
                .map(slice -> slice.band()).findFirst();
    }
}

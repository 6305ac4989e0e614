package icequill.outlook;

import icequill.document.OwnersOutlook;
import icequill.document.OwnersOutlook.Line;
import icequill.document.OwnersOutlook.Swing;
import icequill.document.Where;
import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.BestInterval;
import icequill.forecast.Cause;
import icequill.forecast.Decimals;
import icequill.forecast.Forecast;
import icequill.forecast.IntervalCosts;
import icequill.forecast.PolicyComparison;
import icequill.forecast.Sensitivity;
import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.effects.Assumption;
import icequill.forecast.inputs.Estimate;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.money.Amounts;
import icequill.money.MinorUnits;
import icequill.money.Percent;
import icequill.party.Wording;
import icequill.plans.PlanContext;
import icequill.plans.SiteRisks;
import icequill.pricer.AgreementMargin;
import icequill.pricer.PricedSlot;
import icequill.request.PaperOptions;
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
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** Puts the owner's page of a comparison together. */
public record OwnersAssembly(SiteForecast forecast) {

    private static final List<Integer> YEARS = List.of(1, 3, 5);
    private static final double HUNDRED = 100;
    private static final int DIGITS = 3;
    private static final double TEN = 10;
    /** Months since the last cleaning and brushing are supposed to be known to a factor of two, charges to a fifth. */
    private static final double HALF = 0.5;
    private static final double DOUBLE = 2;
    /** What a cleaning may leave: our estimate. */
    private static final Percent RESTORES_LITTLE = Percent.of("70");
    private static final double A_FIFTH_LESS = 0.8;
    private static final double A_FIFTH_MORE = 1.2;

    public OwnersOutlook page(PaperOptions options) {
        PlanContext hand = forecast.hand();
        Sensitivity<Phrase> sensitivity = sensitivity();
        return new OwnersOutlook(options.date(), hand.setting().shop(),
                options.language().orElse(hand.setting().shop().language()), hand.setting().shop().paper(),
                hand.setting().site().customer().name(), Where.of(hand.setting().site()),
                forecast.ways().stream().map(OwnersAssembly::head).toList(), lines(), interval(),
                head(forecast.recommended()), forecast.amount(sensitivity.base()),
                sensitivity.swings().stream().map(this::swing).toList(),
                notes());
    }

    private List<Phrase> notes() {
        List<Phrase> notes = new ArrayList<>(
                List.of(Phrase.of("mine.conditional"), Phrase.of("mine.calls-margin"), Phrase.of("mine.years")));
        if (cleans() > 0 && cleans() < 1) {
            notes.add(Phrase.of("mine.some-clean"));
        }
        forecast.ways().stream().flatMap(way -> way.plan().stream()).flatMap(plan -> plan.unproven().stream())
                .distinct()
                .forEach(notes::add);
        if (forecast.rates().sitesDiffer().usual().signum() > 0) {
            notes.add(InputsAssembly.sitesDiffer(forecast));
            notes.add(Phrase.of("mine.sites-differ"));
        }
        if (forecast.ways().stream().anyMatch(way -> way.choice().included() > 0)) {
            notes.add(Phrase.of("mine.included"));
        }
        List<Phrase> seasons = InputsAssembly.seasons(forecast);
        notes.addAll(seasons);
        notes.add(Phrase.of(seasons.isEmpty() ? "mine.no-seasons" : "mine.seasons"));
        long step = forecast.ways().stream().mapToLong(way -> first(way).total().step()).max().orElseThrow();
        if (step > 1) {
            notes.add(Phrase.of("mine.step", money(step)));
        }
        if (!forecast.rates().later().isLikeToday()) {
            notes.add(InputsAssembly.later(forecast.rates()));
            notes.add(Phrase.of("mine.later"));
        }
        return notes;
    }

    private static Phrase head(CareOption way) {
        return Phrase.of("outlook.way." + ConstantKey.of(way.kind()),
                fact(way.name().orElse(Wording.same(""))));
    }

    private static Fact fact(Wording name) {
        return new Fact.Named(name.english(), name.spanish());
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>(List.of(
                money("mine.planned", CareOption::planned),
                money("mine.catch-up", way -> way.catchUp().price()),
                line("mine.calls", way -> number(first(way).calls().mean())),
                line("mine.by-cause", way -> Phrase.of("mine.causes", thousandths(first(way), Cause.RANDOM),
                        thousandths(first(way), Cause.CONDENSER), thousandths(first(way), Cause.WATER))),
                line("mine.none", way -> percent(first(way).calls().chance(0))),
                law("mine.charges", Forecast::charges, MixedDistribution::mean),
                law("mine.deviation", Forecast::charges, MixedDistribution::deviation),
                law("mine.p10", Forecast::total, found -> found.quantile(1 / TEN)),
                law("mine.p50", Forecast::total, found -> found.quantile(1 / 2.0)),
                law("mine.p90", Forecast::total, found -> found.quantile(1 - 1 / TEN)),
                law("mine.total", Forecast::total, MixedDistribution::mean)));
        YEARS.forEach(years -> lines.add(cheaper("mine.cheaper", forecast.payPerCall(), years)));
        YEARS.forEach(years -> lines.add(cheaper("mine.cheaper-singly", forecast.bookedSingly(), years)));
        lines.add(money("mine.margin-planned", this::marginOfPlan));
        lines.add(money("mine.margin-calls", way -> forecast.amount(marginOfCalls(way))));
        lines.add(money("mine.margin-catch-up", OwnersAssembly::marginOfCatchUp));
        lines.add(money("mine.margin", way -> marginOfPlan(way).add(forecast.amount(marginOfCalls(way)))
                .add(marginOfCatchUp(way))));
        return lines;
    }

    private Line cheaper(String label, CareOption rival, int years) {
        return new Line(Phrase.of(label, Fact.number(years, "year")),
                forecast.ways().stream().map(way -> forecast.chanceCheaper(way, rival, years)
                        .map(OwnersAssembly::percent).orElse(Phrase.of("mine.nothing"))).toList());
    }

    private Forecast first(CareOption way) {
        return forecast.forecast(way, 1);
    }

    private Line line(String label, Function<CareOption, Phrase> value) {
        return new Line(Phrase.of(label), forecast.ways().stream().map(value).toList());
    }

    private Line money(String label, Function<CareOption, MonetaryAmount> value) {
        return line(label, way -> plain(value.apply(way)));
    }

    private Line law(String label, Function<Forecast, MixedDistribution> law,
            Function<MixedDistribution, Number> value) {
        return money(label, way -> forecast.amount(value.apply(law.apply(first(way))).doubleValue()));
    }

    private static Phrase plain(MonetaryAmount amount) {
        return Phrase.of("mine.value", new Fact.Amount(amount));
    }

    private static Phrase number(double value) {
        return Phrase.of("mine.value", new Fact.Measure(thousandths(value), ""));
    }

    private static Fact thousandths(Forecast found, Cause cause) {
        return new Fact.Measure(thousandths(found.calls(cause).mean()), "");
    }

    private static BigDecimal thousandths(double value) {
        return Decimals.of(value, DIGITS);
    }

    /** To a tenth of a percent. */
    private static Phrase percent(double chance) {
        return Phrase.of("mine.value",
                new Fact.Part(new Percent(Decimals.of(chance * HUNDRED, 1))));
    }

    /** What is earned on planned visits in a year. */
    private MonetaryAmount marginOfPlan(CareOption way) {
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
    private static MonetaryAmount marginOfCatchUp(CareOption way) {
        return way.catchUp().price().subtract(way.catchUp().cost());
    }

    private MonetaryAmount cost(List<PricedSlot> slots) {
        return Amounts.sum(slots.stream().map(slot -> slot.priced().cost()).toList(), forecast.currency());
    }

    /** What is earned on the calls expected in the first year, in minor units. */
    private double marginOfCalls(CareOption way) {
        Forecast found = first(way);
        double scale = Math.pow(TEN, forecast.currency().getDefaultFractionDigits());
        return Stream.of(Cause.values()).mapToDouble(cause -> found.calls(cause).mean()
                * (way.charges().meanCharge(cause) - scale * way.charges().meanCost(cause))).sum();
    }

    private List<Phrase> interval() {
        int cap = forecast.hand().choices().interval().months();
        BestInterval best = costs().best(cap);
        List<Phrase> said = new ArrayList<>();
        said.add(best.months()
                .map(months -> Phrase.of("mine.best", new Fact.Measure(tenths(months), "month"),
                        money(best.aYear())))
                .orElseGet(() -> Phrase.of("mine.no-best", money(best.aYear()))));
        said.add(best.isCapped()
                ? Phrase.of("mine.capped", Fact.number(cap, "month"), money(best.aYearAtCap()),
                        money(best.hygiene()))
                : Phrase.of("mine.not-capped", Fact.number(cap, "month"), money(best.aYearAtCap())));
        if (!forecast.risks().season().isWholeYear()) {
            said.add(Phrase.of("mine.running", Fact.number(forecast.risks().season().aYear(), "month")));
        }
        return said;
    }

    /** Of cleanings at the mean list price and the calls that dirt brings. */
    private IntervalCosts costs() {
        CareOption never = forecast.payPerCall();
        long cleaning = Math.max(1, MinorUnits.of(
                new CareOptions(forecast.hand(), forecast.rates(), forecast.risks().day(), Optional.empty())
                        .cleaning()));
        List<IntervalCosts.Side> sides = new ArrayList<>();
        for (MachineRisk machine : forecast.risks().machines()) {
            machine.condenser().ifPresent(clock -> sides.add(side(clock, never, Cause.CONDENSER)));
            sides.add(side(machine.water(), never, Cause.WATER));
        }
        return cleans() > 0 ? IntervalCosts.resets(cleaning, sides) : IntervalCosts.restarts(cleaning, sides);
    }

    /**
     * A side whose calls only restart in part is one by a slower clock all of whose calls clean; each of these stands for all calls up
     * to it.
     */
    private IntervalCosts.Side side(FoulingLife clock, CareOption way, Cause cause) {
        double charge = way.charges().meanCharge(cause);
        return cleans() > 0
                ? new IntervalCosts.Side(clock.faster(Math.pow(cleans(), 1 / clock.shape())),
                        Decimals.minorUnits(charge / cleans()))
                : new IntervalCosts.Side(clock, Decimals.minorUnits(charge));
    }

    private double cleans() {
        return forecast.risks().policy().cleans();
    }

    private Fact money(long minor) {
        return new Fact.Amount(forecast.amount(minor));
    }

    private static BigDecimal tenths(double months) {
        return Decimals.of(months, 1);
    }

    /** By how much the recommended plan is expected to be cheaper than paying per call in the first year. */
    private PolicyComparison question(List<MachineRisk> machines) {
        return forecast.question(forecast.recommended(), machines);
    }

    private Sensitivity<Phrase> sensitivity() {
        ForecastRates rates = forecast.rates();
        PolicyComparison usual = question(forecast.risks().machines());
        List<Sensitivity.Doubt<Phrase>> doubts = new ArrayList<>();
        doubts.add(doubt(Phrase.of("mine.swing.faults", measure(rates.faults(), Estimate::low),
                measure(rates.faults(), Estimate::high)),
                level -> new SiteRisks.Guessed(level, SiteRisks.Level.USUAL, SiteRisks.Level.USUAL)));
        if (forecast.risks().hasCondensers()) {
            doubts.add(doubt(dirt("mine.swing.condenser", rates.condenser()),
                    level -> new SiteRisks.Guessed(SiteRisks.Level.USUAL, level, SiteRisks.Level.USUAL)));
        }
        doubts.add(doubt(dirt("mine.swing.water", rates.water()),
                level -> new SiteRisks.Guessed(SiteRisks.Level.USUAL, SiteRisks.Level.USUAL, level)));
        doubts.add(new Sensitivity.Doubt<>(Phrase.of("mine.swing.run"), Assumption.MONTHS_RUN.times(HALF, usual),
                Assumption.MONTHS_RUN.times(DOUBLE, usual)));
        doubts.add(new Sensitivity.Doubt<>(Phrase.of("mine.swing.charges"),
                Assumption.CALL_CHARGES.times(A_FIFTH_LESS, usual),
                Assumption.CALL_CHARGES.times(A_FIFTH_MORE, usual)));
        doubts.add(doubt(Phrase.of("mine.swing.cleans"), rates.withCallsThatClean(Percent.ZERO),
                rates.withCallsThatClean(Percent.HUNDRED)));
        doubts.add(doubt(Phrase.of("mine.swing.restores", new Fact.Part(RESTORES_LITTLE)),
                rates.withRestores(RESTORES_LITTLE), rates.withRestores(Percent.HUNDRED)));
        Estimate differ = rates.sitesDiffer();
        if (differ.high().signum() > 0) {
            doubts.add(doubt(
                    Phrase.of("mine.swing.sites", measure(differ, Estimate::low), measure(differ, Estimate::high)),
                    rates.withSitesDiffer(differ.low()), rates.withSitesDiffer(differ.high())));
        }
        sundays().ifPresent(band -> doubts.add(doubt(Phrase.of("mine.swing.band", fact(band.name())),
                rates.withShareOf(band.id(), BigDecimal.ZERO), rates.withShareOf(band.id(), BigDecimal.TWO))));
        return Sensitivity.of(usual, doubts);
    }

    private static Fact measure(Estimate guess, Function<Estimate, BigDecimal> which) {
        return new Fact.Measure(which.apply(guess), "");
    }

    private static Phrase dirt(String key, FoulingEstimate dirt) {
        return Phrase.of(key, new Fact.Measure(dirt.low().byTwelve(), ""), new Fact.Measure(dirt.high().byTwelve(), ""),
                Fact.number(FoulingEstimate.Stops.OF, ""));
    }

    private Sensitivity.Doubt<Phrase> doubt(Phrase what, Function<SiteRisks.Level, SiteRisks.Guessed> guessed) {
        return new Sensitivity.Doubt<>(what,
                question(forecast.risks().machines(guessed.apply(SiteRisks.Level.LOW))),
                question(forecast.risks().machines(guessed.apply(SiteRisks.Level.HIGH))));
    }

    private Sensitivity.Doubt<Phrase> doubt(Phrase what, ForecastRates low, ForecastRates high) {
        return new Sensitivity.Doubt<>(what, question(forecast.with(low)), question(forecast.with(high)));
    }

    private static PolicyComparison question(SiteForecast other) {
        return other.question(other.recommended(), other.risks().machines());
    }

    /** The band of a Sunday noon. */
    private Optional<Band> sundays() {
        ZonedDateTime noon = forecast.risks().day().with(TemporalAdjusters.next(DayOfWeek.SUNDAY))
                .atTime(LocalTime.NOON)
                .atZone(forecast.hand().setting().shop().zone());
        return forecast.hand().setting().rates().labor().week().split(noon, noon.plusHours(1)).stream()
                .map(slice -> slice.band()).findFirst();
    }

    private Swing swing(Sensitivity.Swing<Phrase> found) {
        return new Swing(found.figure(), forecast.amount(found.low()),
                forecast.amount(found.high()));
    }
}

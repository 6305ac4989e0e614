package icequill.outlook;

import icequill.document.OwnersOutlook;
import icequill.document.OwnersOutlook.Line;
import icequill.document.OwnersOutlook.Swing;
import icequill.document.Where;
import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.Cause;
import icequill.forecast.Decimals;
import icequill.forecast.Forecast;
import icequill.forecast.Sensitivity;
import icequill.forecast.charges.MixedDistribution;
import icequill.money.Percent;
import icequill.party.Wording;
import icequill.plans.PlanContext;
import icequill.request.PaperOptions;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.money.MonetaryAmount;

/** Puts the owner's page of a comparison together. */
public record OwnersAssembly(SiteForecast forecast) {

    private static final List<Integer> YEARS = List.of(1, 3, 5);
    private static final double HUNDRED = 100;
    private static final int DIGITS = 3;
    private static final double TEN = 10;

    public OwnersOutlook page(PaperOptions options) {
        PlanContext hand = forecast.hand();
        Sensitivity<Phrase> sensitivity = new OwnersSensitivity(forecast).sensitivity();
        return new OwnersOutlook(options.date(), hand.setting().shop(),
                options.language().orElse(hand.setting().shop().language()), hand.setting().shop().paper(),
                hand.setting().site().customer().name(), Where.of(hand.setting().site()),
                forecast.ways().stream().map(OwnersAssembly::head).toList(), lines(),
                new IntervalAssembly(forecast).said(),
                head(forecast.recommended()), forecast.amount(sensitivity.base()),
                sensitivity.swings().stream().map(this::swing).toList(),
                notes());
    }

    private List<Phrase> notes() {
        List<Phrase> notes = new ArrayList<>(
                List.of(Phrase.of("mine.conditional"), Phrase.of("mine.calls-margin"), Phrase.of("mine.years")));
        double cleans = forecast.risks().policy().cleans();
        if (cleans > 0 && cleans < 1) {
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
            notes.add(Phrase.of("mine.step", new Fact.Amount(forecast.amount(step))));
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
        return name.named();
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
        CareOptionMargin margin = new CareOptionMargin(forecast);
        lines.add(money("mine.margin-planned", margin::ofPlan));
        lines.add(money("mine.margin-calls", margin::ofCalls));
        lines.add(money("mine.margin-catch-up", CareOptionMargin::ofCatchUp));
        lines.add(money("mine.margin",
                way -> margin.ofPlan(way).add(margin.ofCalls(way)).add(CareOptionMargin.ofCatchUp(way))));
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

    private Swing swing(Sensitivity.Swing<Phrase> found) {
        return new Swing(found.figure(), forecast.amount(found.low()),
                forecast.amount(found.high()));
    }
}

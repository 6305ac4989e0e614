package icequill.outlook;

import icequill.agreement.CleaningInterval;
import icequill.document.CareOptionScope;
import icequill.document.Outlook;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.ChanceInTen;
import icequill.forecast.ChancesPerTenSites;
import icequill.forecast.Decimals;
import icequill.forecast.Forecast;
import icequill.forecast.charges.MixedDistribution;
import icequill.money.Amounts;
import icequill.money.Stepping;
import icequill.party.Wording;
import icequill.plans.PricedPlan;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** Tells a customer what a forecast comes to, in figures no finer than is known. */
record OutlookAssembly(SiteForecast forecast) {

    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;
    private static final int TEN = 10;
    private static final String MONTH = "month";

    Outlook outlook() {
        List<EstimateWeights.Likely> weights = new EstimateWeights(forecast).weights();
        // Somebody may be on the telephone, and none waits for another.
        List<Outlook.Way> ways = forecast.ways().parallelStream().map(way -> way(way, weights)).toList();
        CleaningInterval interval = forecast.hand().choices().interval();
        return new Outlook(forecast.years(), forecast.recommended().name().orElseThrow(), answer(interval, ways), ways,
                new NonCashAssembly(forecast).all(),
                new InputsAssembly(forecast).all(), interval.reasons());
    }

    private Outlook.Way way(CareOption way, List<EstimateWeights.Likely> weights) {
        Forecast first = forecast.forecast(way, 1);
        return new Outlook.Way(way.kind(), way.name(), new CareOptionScopes(forecast).of(way), way.planned(),
                tenths(first.calls().mean()),
                ChancesPerTenSites.of(first.calls()), span(way, 1, weights), span(way, forecast.years(), weights),
                forecast.chanceCheaper(way, forecast.payPerCall(), 1).map(ChanceInTen::of),
                forecast.chanceCheaper(way, forecast.payPerCall(), forecast.years()).map(ChanceInTen::of),
                year(way), new OwnCostsAhead(forecast).firstYear(way).map(forecast::rounded));
    }

    private Outlook.ExpectedYear year(CareOption way) {
        return new Outlook.ExpectedYear(way.firstYear(), forecast.rounded(
                forecast.amount(forecast.forecast(way, 1).charges().mean())), new NonCashAssembly(forecast).of(way));
    }

    /** Wide enough for the usual guesses, and for all of them in doubt; rounded outward, but never past what is planned. */
    private Outlook.Span span(CareOption way, int years, List<EstimateWeights.Likely> weights) {
        Forecast usual = forecast.forecast(way, years);
        MixedDistribution law = usual.total();
        MixedDistribution doubted = new EstimateWeights(forecast).total(way, years, weights);
        long planned = usual.planned();
        double nothingMore = law.chanceOfAtMost(planned);
        boolean isOften = nothingMore > LOW;
        long low = isOften ? planned : Math.min(law.quantile(LOW), doubted.quantile(LOW));
        long high = Math.max(law.quantile(HIGH), doubted.quantile(HIGH));
        MonetaryAmount least = forecast.amount(planned);
        return new Outlook.Span(Amounts.larger(least, step(Stepping.DOWN, low)),
                mean(usual),
                high == planned ? least : step(Stepping.UP, high),
                isOften ? Optional.of(ChanceInTen.of(nothingMore)) : Optional.empty());
    }

    private MonetaryAmount mean(Forecast expected) {
        return Amounts.larger(forecast.amount(expected.planned()),
                round(Decimals.minorUnits(expected.total().mean())));
    }

    private MonetaryAmount step(Stepping stepping, long minor) {
        return stepping.of(forecast.amount(minor), forecast.rates().roundTo());
    }

    private MonetaryAmount round(long minor) {
        return forecast.rounded(forecast.amount(minor));
    }

    private static BigDecimal tenths(double number) {
        return Decimals.of(number, 1);
    }

    /**
     * About the plan that cleans as often as recommended, or the nearest to it, first beside the same cleanings one at a time. All
     * sums are those that the table prints, so that a reader finds them again.
     */
    private List<Phrase> answer(CleaningInterval interval, List<Outlook.Way> ways) {
        CareOption plan = forecast.recommended();
        PricedPlan recommended = plan.plan().orElseThrow();
        Fact name = name(plan.name().orElseThrow());
        List<Phrase> answer = new ArrayList<>();
        answer.add(headline(plan, name, recommended.tier().monthsBetweenFullCleans()
                .filter(months -> months == interval.months()).isPresent()));
        Optional<Integer> gap = recommended.tier().monthsBetweenFullCleans();
        if (gap.filter(months -> months > interval.months()).isPresent()) {
            answer.add(Phrase.of("choice.too-seldom", Fact.number(gap.get(), MONTH),
                    Fact.number(interval.months(), MONTH)));
        }
        answer.addAll(calls(name));
        answer.addAll(cash(plan, name, ways));
        return answer;
    }

    private Phrase headline(CareOption plan, Fact name, boolean isJustAsRecommended) {
        CareOptionScope scope = new CareOptionScopes(forecast).of(plan);
        Fact cleanings = scope.fullCleanings() > 0
                ? Fact.number(scope.fullCleanings(), "full-cleaning")
                : Fact.number(scope.visits(), "visit");
        String machines = forecast.risks().site().machines().size() > 1 ? "many" : "one";
        return Phrase.of((isJustAsRecommended ? "outlook.needs-" : "outlook.gets-") + machines, name, cleanings,
                new Fact.Amount(plan.planned()), new Fact.Amount(forecast.bookedSingly().planned()));
    }

    /** Calls to expect with and without cleaning, and those that there were. */
    private List<Phrase> calls(Fact name) {
        BigDecimal with = tenths(forecast.forecast(forecast.recommended(), 1).calls().mean());
        BigDecimal without = tenths(forecast.forecast(forecast.payPerCall(), 1).calls().mean());
        List<Phrase> calls = new ArrayList<>();
        calls.add(with.compareTo(without) < 0
                ? Phrase.of("outlook.expect", new Fact.Measure(with, "call"), new Fact.Measure(without, ""))
                : Phrase.of("outlook.spares-none", name));
        new EstimateWeights(forecast).record().ifPresent(found -> {
            calls.add(InputsAssembly.lastYear(found));
            if (without.compareTo(BigDecimal.valueOf(found.had() + 1L)) >= 0) {
                calls.add(Phrase.of("outlook.more-ahead", new Fact.Measure(without, "")));
            }
        });
        return calls;
    }

    /** From how many calls the plan pays, and what the first year comes to, in cash and with what dirt costs besides. */
    private List<Phrase> cash(CareOption plan, Fact name, List<Outlook.Way> ways) {
        MonetaryAmount call = forecast.meanCall();
        List<Phrase> cash = new ArrayList<>();
        cash.add(BreakEven.calls(plan.planned(), call)
                .map(calls -> Phrase.of("outlook.pays-if", name, new Fact.Amount(plan.planned()),
                        Fact.number(calls, "call"), plain(forecast.rounded(call))))
                .orElseGet(() -> Phrase.of("compare.never-pays", name)));
        Outlook.ExpectedYear with = year(plan);
        Outlook.ExpectedYear without = year(forecast.payPerCall());
        double cheaper = forecast.forecast(plan, 1).chanceCheaperThan(forecast.forecast(forecast.payPerCall(), 1));
        boolean pays = with.cash().isLessThan(without.cash());
        cash.add(Phrase.of(pays ? "outlook.pays" : "outlook.pays-not", plain(with.cash()), plain(without.cash()),
                ofTen(pays ? cheaper : 1 - cheaper)));
        cash.add(Phrase.of("outlook.beside-" + Outlook.dirtCosts(ways), plain(with.all()), plain(without.all())));
        return cash;
    }

    /** So many of ten in words. */
    private static Fact ofTen(double chance) {
        ChanceInTen tenths = ChanceInTen.of(chance);
        return new Fact.Word("outlook.of-ten." + switch (tenths.than()) {
        case LESS -> 0;
        case ABOUT -> tenths.tenths();
        case MORE -> TEN;
        });
    }

    private static Fact plain(MonetaryAmount rounded) {
        return new Fact.Measure(Amounts.number(rounded), "");
    }

    private static Fact name(Wording name) {
        return name.named();
    }
}

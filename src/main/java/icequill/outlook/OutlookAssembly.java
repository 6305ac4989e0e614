package icequill.outlook;

import icequill.agreement.CleaningInterval;
import icequill.document.Outlook;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.ChanceInTen;
import icequill.forecast.ChancesPerTenSites;
import icequill.forecast.Decimals;
import icequill.forecast.Forecast;
import icequill.forecast.MixedDistribution;
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

    Outlook outlook() {
        List<GuessDoubt.Likely> weights = new GuessDoubt(forecast).weights();
        List<Outlook.Way> ways = forecast.ways().stream().map(way -> way(way, weights)).toList();
        CleaningInterval interval = forecast.hand().choices().interval();
        return new Outlook(forecast.years(), answer(interval), ways, new NonCashAssembly(forecast).all(),
                new InputsAssembly(forecast).all(), interval.reasons());
    }

    private Outlook.Way way(CareOption way, List<GuessDoubt.Likely> weights) {
        Forecast first = forecast.forecast(way, 1);
        return new Outlook.Way(way.kind(), way.name(), new CareOptionScopes(forecast).of(way), way.planned(),
                tenths(first.calls().mean()),
                ChancesPerTenSites.of(first.calls()), span(way, 1, weights), span(way, forecast.years(), weights),
                forecast.chanceCheaper(way, forecast.payPerCall(), 1).map(ChanceInTen::of),
                forecast.chanceCheaper(way, forecast.payPerCall(), forecast.years()).map(ChanceInTen::of),
                new OwnCostsAhead(forecast).firstYear(way).map(forecast::rounded));
    }

    /** Wide enough for the usual guesses, and for all of them in doubt; rounded outward, but never past what is planned. */
    private Outlook.Span span(CareOption way, int years, List<GuessDoubt.Likely> weights) {
        Forecast usual = forecast.forecast(way, years);
        MixedDistribution law = usual.total();
        MixedDistribution doubted = new GuessDoubt(forecast).total(way, years, weights);
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
     * About the plan that cleans as often as recommended, or the nearest to it. Differences are those of what the table prints, so
     * that a reader finds them again.
     */
    private List<Phrase> answer(CleaningInterval interval) {
        CareOption plan = forecast.recommended();
        PricedPlan recommended = plan.plan().orElseThrow();
        Forecast with = forecast.forecast(plan, 1);
        Forecast without = forecast.forecast(forecast.payPerCall(), 1);
        Fact name = name(plan.name().orElseThrow());
        BigDecimal spared = tenths(without.calls().mean()).subtract(tenths(with.calls().mean()));
        double saved = without.total().mean() - with.total().mean();
        double cheaper = with.chanceCheaperThan(without);
        MonetaryAmount call = forecast.meanCall();
        List<Phrase> answer = new ArrayList<>();
        answer.add(BreakEven.calls(plan.planned(), call)
                .map(calls -> Phrase.of("outlook.pays-if", name, new Fact.Amount(plan.planned()),
                        Fact.number(calls, "call"), plain(forecast.rounded(call))))
                .orElseGet(() -> Phrase.of("compare.never-pays", name)));
        answer.add(spared.signum() > 0
                ? Phrase.of("outlook.spares", name, new Fact.Measure(spared, ""),
                        new Fact.Measure(tenths(without.calls().mean()), "call"))
                : Phrase.of("outlook.spares-none", name));
        MonetaryAmount more = mean(without).subtract(mean(with));
        Fact difference = plain(more.abs());
        answer.add(saved > 0
                ? Phrase.of("outlook.pays", name, difference, ofTen(cheaper))
                : Phrase.of(new NonCashAssembly(forecast).electricity().isEmpty()
                        ? "outlook.pays-not-no-electricity"
                        : "outlook.pays-not", difference, ofTen(1 - cheaper)));
        MonetaryAmount singly = recommended.year().list().subtract(plan.planned());
        if (singly.isPositive()) {
            answer.add(Phrase.of("outlook.less-than-singly", new Fact.Amount(singly)));
        } else if (singly.isNegative()) {
            answer.add(Phrase.of("outlook.more-than-singly", new Fact.Amount(singly.negate())));
        }
        Optional<Integer> gap = recommended.tier().monthsBetweenFullCleans();
        if (gap.filter(months -> months > interval.months()).isPresent()) {
            answer.add(Phrase.of("choice.too-seldom", Fact.number(gap.get(), "month"),
                    Fact.number(interval.months(), "month")));
        }
        return answer;
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
        return new Fact.Named(name.english(), name.spanish());
    }
}

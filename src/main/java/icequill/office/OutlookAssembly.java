package icequill.office;

import icequill.agreement.CleaningInterval;
import icequill.document.Outlook;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.ChargeLaw;
import icequill.forecast.Counts;
import icequill.forecast.Forecast;
import icequill.money.Amounts;
import icequill.money.Shares;
import icequill.party.Wording;
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
    private static final double MILLION = 1_000_000;

    Outlook outlook() {
        List<Outlook.Way> ways = forecast.ways().stream().map(this::way).toList();
        CleaningInterval interval = forecast.hand().choices().interval();
        return new Outlook(forecast.years(), answer(interval), ways, new BesideAssembly(forecast).all(),
                new InputsAssembly(forecast).all(), interval.reasons());
    }

    private Outlook.Way way(Way way) {
        Forecast first = forecast.forecast(way, 1);
        Forecast later = forecast.forecast(way, forecast.years());
        return new Outlook.Way(way.kind(), way.name(), way.planned(), tenths(first.calls().mean()),
                sites(first.calls()), span(first.total()), span(later.total()),
                forecast.chanceCheaper(way, 1).map(OutlookAssembly::ofTen),
                forecast.chanceCheaper(way, forecast.years()).map(OutlookAssembly::ofTen));
    }

    private Outlook.Span span(ChargeLaw law) {
        return new Outlook.Span(round(law.quantile(LOW)), round(Math.round(law.mean())), round(law.quantile(HIGH)));
    }

    private MonetaryAmount round(long minor) {
        return forecast.rounded(forecast.amount(minor));
    }

    private static Outlook.TenSites sites(Counts calls) {
        double none = calls.chance(0);
        double one = calls.chance(1);
        List<BigDecimal> shares = Shares.byLargestRemainder(BigDecimal.TEN,
                List.of(weight(none), weight(one), weight(Math.max(0, 1 - none - one))), 0);
        return new Outlook.TenSites(shares.get(0).intValueExact(), shares.get(1).intValueExact(),
                shares.get(2).intValueExact());
    }

    private static BigDecimal weight(double chance) {
        return BigDecimal.valueOf(Math.round(chance * MILLION));
    }

    private static int ofTen(double chance) {
        return (int) Math.round(chance * TEN);
    }

    private static BigDecimal tenths(double number) {
        return BigDecimal.valueOf(Math.round(number * TEN), 1);
    }

    /** About the plan that cleans as often as recommended, or the nearest to it. */
    private List<Phrase> answer(CleaningInterval interval) {
        Way plan = forecast.recommended();
        PricedPlan recommended = plan.plan().orElseThrow();
        Forecast with = forecast.forecast(plan, 1);
        Forecast without = forecast.forecast(forecast.payPerCall(), 1);
        Fact name = name(plan.name().orElseThrow());
        double spared = without.calls().mean() - with.calls().mean();
        double saved = without.total().mean() - with.total().mean();
        int cheaper = ofTen(with.chanceCheaperThan(without));
        MonetaryAmount call = forecast.meanCall();
        List<Phrase> answer = new ArrayList<>();
        answer.add(ComparisonAssembly.breakEven(plan.planned(), call)
                .map(calls -> Phrase.of("outlook.pays-if", name, new Fact.Amount(plan.planned()),
                        Fact.number(calls, "call"), plain(forecast.rounded(call))))
                .orElseGet(() -> Phrase.of("compare.never-pays", name)));
        answer.add(spared > 0
                ? Phrase.of("outlook.spares", name, new Fact.Measure(tenths(spared), ""),
                        new Fact.Measure(tenths(without.calls().mean()), "call"))
                : Phrase.of("outlook.spares-none", name));
        Fact difference = plain(round(Math.round(Math.abs(saved))));
        answer.add(saved > 0
                ? Phrase.of("outlook.pays", name, difference, ofTen(cheaper))
                : Phrase.of("outlook.pays-not", difference, ofTen(TEN - cheaper)));
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

    /** In words where a number would say never or always. */
    private static Fact ofTen(int sites) {
        return new Fact.Word("outlook.of-ten." + sites);
    }

    private static Fact plain(MonetaryAmount rounded) {
        return new Fact.Measure(Amounts.number(rounded), "");
    }

    private static Fact name(Wording name) {
        return new Fact.Named(name.english(), name.spanish());
    }
}

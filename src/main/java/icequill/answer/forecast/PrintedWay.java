package icequill.answer.forecast;

import icequill.document.CareOptionKind;
import icequill.document.CareOptionScope;
import icequill.document.Outlook;
import icequill.forecast.ChanceInTen;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A way of care with the figures that the customer's paper has, rounded.
 *
 * @param name missing where nothing is planned
 * @param tenSites of ten sites like this, how many have no call in the first year, one, and more
 * @param cheaperInTenFirstYear years of ten in which it costs less than paying per call; missing beside itself
 * @param firstYearWithYourOwnCosts missing where the customer did not say what stops cost him
 */
public record PrintedWay(CareOptionKind kind, Optional<String> name, Scope whatYouGet, BigDecimal expectedCalls,
        List<Integer> tenSites, ExpectedYear firstYearAsExpected, Span firstYear, Span allYears,
        Optional<InTen> cheaperInTenFirstYear, Optional<InTen> cheaperInTenAllYears,
        Optional<MonetaryAmount> firstYearWithYourOwnCosts) {

    /** What it gives in the first year; catching up is before tax. */
    public record Scope(int visits, int fullCleanings, Optional<Integer> filterChanges, int readings,
            int includedCalls, MonetaryAmount catchingUp, boolean callsClean) {}

    /**
     * Parts that add up.
     *
     * @param stops and {@code electricity}, {@code wear}: what dirt costs beside the cash
     */
    public record ExpectedYear(MonetaryAmount planned, MonetaryAmount calls, MonetaryAmount cash, MonetaryAmount stops,
            MonetaryAmount electricity, MonetaryAmount wear, MonetaryAmount all) {}

    /**
     * Eight years of ten lie between low and high.
     *
     * @param justPlanned years of ten that cost just what is planned; missing where it is one or fewer
     */
    public record Span(MonetaryAmount low, MonetaryAmount mean, MonetaryAmount high, Optional<InTen> justPlanned) {}

    /** About, more or fewer than so many in ten. */
    public record InTen(ChanceInTen.Than than, int tenths) {}

    public static PrintedWay of(Outlook.Way way) {
        return new PrintedWay(way.kind(), way.name().map(name -> name.english()), scope(way.scope()), way.calls(),
                List.of(way.sites().none(), way.sites().one(), way.sites().more()), year(way.year()),
                span(way.first()), span(way.later()), way.cheaperFirst().map(PrintedWay::inTen),
                way.cheaperLater().map(PrintedWay::inTen), way.withOwnCosts());
    }

    private static ExpectedYear year(Outlook.ExpectedYear year) {
        return new ExpectedYear(year.planned(), year.calls(), year.cash(), year.beside().stops(),
                year.beside().electricity(), year.beside().wear(), year.all());
    }

    private static Scope scope(CareOptionScope scope) {
        return new Scope(scope.visits(), scope.fullCleanings(), scope.filters(), scope.readings(),
                scope.includedCalls(), scope.catchUp(), scope.doCallsClean());
    }

    private static InTen inTen(ChanceInTen chance) {
        return new InTen(chance.than(), chance.tenths());
    }

    private static Span span(Outlook.Span span) {
        return new Span(span.low(), span.mean(), span.high(), span.planned().map(PrintedWay::inTen));
    }
}

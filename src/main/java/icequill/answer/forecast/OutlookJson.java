package icequill.answer.forecast;

import icequill.document.CareOptionKind;
import icequill.document.CareOptionScope;
import icequill.document.Outlook;
import icequill.explain.ConstantKey;
import icequill.forecast.ChanceInTen;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.MonetaryAmount;

/** The figures of an outlook as the customer's paper has them, rounded. */
public record OutlookJson(Outlook outlook) {

    public List<Map<String, Object>> view() {
        return outlook.ways().stream().map(this::way).toList();
    }

    private Map<String, Object> way(Outlook.Way way) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("kind", kind(way.kind()));
        view.put("name", way.name().map(name -> name.english()).orElse(null));
        view.put("whatYouGet", scope(way.scope()));
        view.put("expectedCalls", way.calls());
        view.put("tenSites", List.of(way.sites().none(), way.sites().one(), way.sites().more()));
        view.put("firstYearAsExpected", year(way.year()));
        view.put("firstYear", span(way.first()));
        view.put("allYears", span(way.later()));
        view.put("cheaperInTenFirstYear", way.cheaperFirst().map(OutlookJson::inTen).orElse(null));
        view.put("cheaperInTenAllYears", way.cheaperLater().map(OutlookJson::inTen).orElse(null));
        view.put("firstYearWithYourOwnCosts",
                way.withOwnCosts().map(OutlookJson::plain).orElse(null));
        return view;
    }

    private static Map<String, Object> year(Outlook.ExpectedYear year) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("planned", plain(year.planned()));
        view.put("calls", plain(year.calls()));
        view.put("cash", plain(year.cash()));
        view.put("stops", plain(year.beside().stops()));
        view.put("electricity", plain(year.beside().electricity()));
        view.put("wear", plain(year.beside().wear()));
        view.put("all", plain(year.all()));
        return view;
    }

    private static BigDecimal plain(MonetaryAmount amount) {
        return new BigDecimal(Amounts.plain(amount));
    }

    private static Map<String, Object> scope(CareOptionScope scope) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("visits", scope.visits());
        view.put("fullCleanings", scope.fullCleanings());
        view.put("filterChanges", scope.filters().orElse(null));
        view.put("readings", scope.readings());
        view.put("includedCalls", scope.includedCalls());
        view.put("catchingUp", plain(scope.catchUp()));
        view.put("callsClean", scope.doCallsClean());
        view.put("tax", "not included");
        return view;
    }

    private static String inTen(ChanceInTen chance) {
        return ConstantKey.of(chance.than()) + " " + chance.tenths();
    }

    private static String kind(CareOptionKind kind) {
        return ConstantKey.of(kind);
    }

    private static Map<String, Object> span(Outlook.Span span) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("low", plain(span.low()));
        view.put("mean", plain(span.mean()));
        view.put("high", plain(span.high()));
        view.put("justPlannedInTen", span.planned().map(OutlookJson::inTen).orElse(null));
        return view;
    }
}

package icequill.answer;

import icequill.answer.forecast.ForecastJson;
import icequill.answer.forecast.OutlookJson;
import icequill.document.ComparisonSheet;
import icequill.files.answer.Sheet;
import icequill.money.Amounts;
import icequill.outlook.SiteForecast;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** A comparison that was written, and its figures. */
public final class ComparisonResult implements Sheet {

    private final WrittenPaper paper;
    private final ComparisonSheet sheet;
    private final Optional<SiteForecast> forecast;

    public ComparisonResult(WrittenPaper paper, ComparisonSheet sheet, Optional<SiteForecast> forecast) {
        this.paper = paper;
        this.sheet = sheet;
        this.forecast = forecast;
    }

    public WrittenPaper paper() {
        return paper;
    }

    @Override
    public Object data() {
        return json();
    }

    /** The paper, every figure on it, and what they were figured from. */
    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>(paper.json());
        view.put("callPrice", number(sheet.callPrice()));
        view.put("callsLastYear", sheet.lastYear().orElse(null));
        Map<String, Object> plans = new LinkedHashMap<>();
        sheet.plans().forEach(plan -> plans.put(plan.name().english(), plan(plan)));
        view.put("plans", plans);
        forecast.ifPresent(found -> view.putAll(new ForecastJson(found).view()));
        sheet.outlook().ifPresent(outlook -> view.put("asPrinted", new OutlookJson(outlook).view()));
        return view;
    }

    private static Map<String, Object> plan(ComparisonSheet.Plan plan) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("visits", plan.visits());
        view.put("fullCleanings", plan.fullCleans());
        view.put("price", number(plan.price()));
        view.put("bookedSingly", number(plan.singly()));
        view.put("callsToBreakEven", plan.breakEven().orElse(null));
        return view;
    }

    private static BigDecimal number(MonetaryAmount amount) {
        return new BigDecimal(Amounts.plain(amount));
    }
}

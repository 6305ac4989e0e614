package icequill.answer;

import icequill.answer.forecast.ForecastFigures;
import icequill.answer.forecast.PrintedWay;
import icequill.document.ComparisonSheet;
import icequill.files.answer.Sheet;
import icequill.outlook.SiteForecast;
import java.util.LinkedHashMap;
import java.util.List;
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

    /**
     * What JSON shows of it.
     *
     * @param callPrice what one call costs, before tax
     * @param callsLastYear missing where nobody said
     * @param plans by name
     * @param forecast missing where the shop has no file of kind forecast
     * @param asPrinted the figures of the paper, rounded; missing without a forecast
     */
    public record Data(WrittenPaper paper, MonetaryAmount callPrice, Optional<Integer> callsLastYear,
            Map<String, Plan> plans, Optional<ForecastFigures> forecast, Optional<List<PrintedWay>> asPrinted) {}

    /**
     * A year of a plan, before tax.
     *
     * @param bookedSingly what its visits cost one by one
     * @param callsToBreakEven missing where so many calls never come
     */
    public record Plan(int visits, int fullCleanings, MonetaryAmount price, MonetaryAmount bookedSingly,
            Optional<Integer> callsToBreakEven) {}

    /** The paper, every figure on it, and what they were figured from. */
    @Override
    public Data data() {
        Map<String, Plan> plans = new LinkedHashMap<>();
        sheet.plans().forEach(plan -> plans.put(plan.name().english(), new Plan(plan.visits(), plan.fullCleans(),
                plan.price(), plan.singly(), plan.breakEven())));
        return new Data(paper, sheet.callPrice(), sheet.lastYear(), plans, forecast.map(ForecastFigures::of),
                sheet.outlook().map(outlook -> outlook.ways().stream().map(PrintedWay::of).toList()));
    }
}

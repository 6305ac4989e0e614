package icequill.answer.forecast;

import icequill.explain.ConstantKey;
import icequill.forecast.Cause;
import icequill.forecast.Forecast;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.outlook.CareOption;
import icequill.outlook.SiteForecast;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

/**
 * What a way of care may cost; of the first year unless said otherwise.
 *
 * @param monthsBetweenCleanings missing where nothing is cleaned as planned
 * @param monthsBetweenBrushings missing where nothing is brushed
 * @param cleanings and {@code brushings}: months from the beginning, of five years or the horizon
 * @param catchingUp paid once besides
 * @param expectedCalls how many
 * @param callsByCause the same by cause
 * @param chancesOfCalls of none, of one, and so on
 * @param charges for calls
 * @param total with what is planned
 * @param chanceCheaperThanPayPerCall by years, 1, 3 and 5; missing beside itself
 * @param horizon all the years that are looked ahead together
 */
public record CareFigures(String kind, Optional<Integer> monthsBetweenCleanings,
        Optional<Integer> monthsBetweenBrushings, List<BigDecimal> cleanings, List<BigDecimal> brushings,
        MonetaryAmount plannedPrice, MonetaryAmount catchingUp, int includedCalls, BigDecimal expectedCalls,
        Map<String, BigDecimal> callsByCause, BigDecimal chanceOfNoCall, List<BigDecimal> chancesOfCalls,
        Charges charges, Charges total, Optional<Map<String, BigDecimal>> chanceCheaperThanPayPerCall,
        Optional<Map<String, BigDecimal>> chanceCheaperThanBookedSingly, Horizon horizon) {

    private static final List<Integer> YEARS = List.of(1, 3, 5);
    private static final double MONTHS = 12;
    private static final int MOST_CALLS = 12;

    /**
     * The same over several years; chances that these together cost less.
     *
     * @param chanceCheaperThanPayPerCall missing beside itself
     */
    public record Horizon(int years, MonetaryAmount plannedPrice, BigDecimal expectedCalls,
            Map<String, BigDecimal> callsByCause, BigDecimal chanceOfNoCall, List<BigDecimal> chancesOfCalls,
            Charges charges, Charges total, Optional<BigDecimal> chanceCheaperThanPayPerCall,
            Optional<BigDecimal> chanceCheaperThanBookedSingly) {}

    static CareFigures of(SiteForecast forecast, CareOption way) {
        boolean brushed = forecast.risks().hasCondensers();
        Forecast year = forecast.forecast(way, 1);
        return new CareFigures(ConstantKey.of(way.kind()), way.care().cleaned(),
                way.care().brushed().filter(months -> brushed), months(forecast, way.care().water()),
                brushed ? months(forecast, way.care().condenser()) : List.of(), way.planned(), way.catchUp().price(),
                way.included(), SixDecimals.of(year.calls().mean()), byCause(year),
                SixDecimals.of(year.calls().chance(0)), chances(year.calls()), Charges.of(forecast, year.charges()),
                Charges.of(forecast, year.total()), cheaper(forecast, way, forecast.payPerCall()),
                cheaper(forecast, way, forecast.bookedSingly()), horizon(forecast, way));
    }

    private static Horizon horizon(SiteForecast forecast, CareOption way) {
        int years = forecast.years();
        Forecast over = forecast.forecast(way, years);
        return new Horizon(years, forecast.amount(over.planned()), SixDecimals.of(over.calls().mean()), byCause(over),
                SixDecimals.of(over.calls().chance(0)), chances(over.calls()), Charges.of(forecast, over.charges()),
                Charges.of(forecast, over.total()),
                forecast.chanceCheaper(way, forecast.payPerCall(), years).map(SixDecimals::of),
                forecast.chanceCheaper(way, forecast.bookedSingly(), years).map(SixDecimals::of));
    }

    /** Months of the longest horizon asked for on which a calendar cleans. */
    private static List<BigDecimal> months(SiteForecast forecast, CleaningSchedule care) {
        int years = Math.max(YEARS.getLast(), forecast.years());
        return care.until(MONTHS * years).stream().map(SixDecimals::of).toList();
    }

    private static List<BigDecimal> chances(CountDistribution calls) {
        return IntStream.rangeClosed(0, Math.min(MOST_CALLS, calls.most()))
                .mapToObj(n -> SixDecimals.of(calls.chance(n))).toList();
    }

    private static Map<String, BigDecimal> byCause(Forecast found) {
        Map<String, BigDecimal> calls = new LinkedHashMap<>();
        for (Cause cause : Cause.values()) {
            calls.put(ConstantKey.of(cause), SixDecimals.of(found.calls(cause).mean()));
        }
        return calls;
    }

    private static Optional<Map<String, BigDecimal>> cheaper(SiteForecast forecast, CareOption way, CareOption rival) {
        if (way.equals(rival)) {
            return Optional.empty();
        }
        Map<String, BigDecimal> chances = new LinkedHashMap<>();
        YEARS.forEach(years -> chances.put(String.valueOf(years),
                SixDecimals.of(forecast.chanceCheaper(way, rival, years).orElseThrow())));
        return Optional.of(chances);
    }
}

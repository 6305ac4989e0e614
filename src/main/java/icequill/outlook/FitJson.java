package icequill.outlook;

import icequill.explain.ConstantKey;
import icequill.forecast.Decimals;
import icequill.forecast.fit.Fit;
import icequill.forecast.fit.StopSeason;
import icequill.party.SiteKind;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Fits as data for other programs. */
public final class FitJson {

    private FitJson() {
    }

    /** As data, in the order of the fits. */
    public static List<Map<String, Object>> of(List<SideFit> fits) {
        return fits.stream().map(FitJson::json).toList();
    }

    private static Map<String, Object> json(SideFit fitted) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("side", ConstantKey.of(fitted.side()));
        view.put("kind", fitted.kind().map(SiteKind::id).orElse(null));
        view.put("runs", fitted.fit().runs());
        view.put("stops", fitted.fit().stops());
        view.put("fitted", fitted.fit() instanceof Fit.Found);
        if (fitted.fit() instanceof Fit.Found found) {
            view.put("shape", limits(found.clock().shape(), found.shape()));
            view.put("scaleMonths", limits(found.clock().scale(), found.scale()));
            view.put("by6", FitSettings.bySix(found.clock()));
            view.put("by12", FitSettings.byTwelve(found.clock()));
            view.put("mayBeRandom", found.mayBeRandom());
        }
        view.put("season", fitted.season().map(FitJson::json).orElse(null));
        return view;
    }

    private static Map<String, Object> json(StopSeason season) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("lookedAt", season instanceof StopSeason.LookedAt);
        view.put("found", season instanceof StopSeason.Found);
        if (season instanceof StopSeason.LookedAt looked) {
            view.put("chiSquare", sixDigits(looked.chiSquare()));
            view.put("foundAbove", StopSeason.THRESHOLD);
            view.put("stopsByQuarter", looked.quarters().stream().map(StopSeason.Quarter::stops).toList());
            view.put("expectedByQuarter",
                    looked.quarters().stream().map(quarter -> sixDigits(quarter.expected())).toList());
        }
        if (season instanceof StopSeason.Found found) {
            view.put("factorsByQuarter", found.factors());
        }
        return view;
    }

    private static Map<String, Object> limits(double value, Fit.Limits limits) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("likeliest", sixDigits(value));
        view.put("low", sixDigits(limits.low()));
        view.put("high", Double.isInfinite(limits.high()) ? null : sixDigits(limits.high()));
        return view;
    }

    private static BigDecimal sixDigits(double value) {
        return Decimals.of(value, 6);
    }
}

package icequill.answer.forecast;

import icequill.explain.ConstantKey;
import icequill.forecast.fit.Fit;
import icequill.forecast.fit.StopSeason;
import icequill.outlook.FitSettings;
import icequill.outlook.SideFit;
import icequill.party.SiteKind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What records say of how soon dirt stops machines.
 *
 * @param side condenser or water
 * @param kind of the sites; missing for all
 * @param isFitted whether there were stops enough; what follows but the season is missing where not
 * @param by6 machines of twenty that stop by month 6, and {@code by12}
 * @param mayBeRandom whether the records leave it open that dirt does no harm
 * @param season is looked for at all sites together; missing at one kind
 */
public record FittedClock(String side, Optional<String> kind, int runs, int stops, boolean isFitted,
        Optional<Likeliest> shape, Optional<Likeliest> scaleMonths, Optional<BigDecimal> by6,
        Optional<BigDecimal> by12, Optional<Boolean> mayBeRandom, Optional<Season> season) {

    /**
     * A value with its 95 % limits.
     *
     * @param high missing where the records set none
     */
    public record Likeliest(BigDecimal likeliest, BigDecimal low, Optional<BigDecimal> high) {
        private static Likeliest of(double value, Fit.Limits limits) {
            return new Likeliest(SixDecimals.of(value), SixDecimals.of(limits.low()),
                    Double.isInfinite(limits.high()) ? Optional.empty() : Optional.of(SixDecimals.of(limits.high())));
        }
    }

    /**
     * Whether stops come more often in some quarters.
     *
     * @param isLookedAt whether there were stops enough; what follows is missing where not
     * @param foundAbove the bound of the chi-square
     * @param factorsByQuarter how many times as fast; missing where nothing was found
     */
    public record Season(boolean isLookedAt, boolean isFound, Optional<BigDecimal> chiSquare,
            Optional<BigDecimal> foundAbove, Optional<List<Integer>> stopsByQuarter,
            Optional<List<BigDecimal>> expectedByQuarter, Optional<List<BigDecimal>> factorsByQuarter) {
        private static Season of(StopSeason season) {
            Optional<StopSeason.LookedAt> looked = season instanceof StopSeason.LookedAt at
                    ? Optional.of(at)
                    : Optional.empty();
            return new Season(looked.isPresent(), season instanceof StopSeason.Found,
                    looked.map(at -> SixDecimals.of(at.chiSquare())),
                    looked.map(at -> BigDecimal.valueOf(StopSeason.THRESHOLD)),
                    looked.map(at -> at.quarters().stream().map(StopSeason.Quarter::stops).toList()),
                    looked.map(at -> at.quarters().stream().map(quarter -> SixDecimals.of(quarter.expected()))
                            .toList()),
                    season instanceof StopSeason.Found found ? Optional.of(found.factors()) : Optional.empty());
        }
    }

    public static FittedClock of(SideFit fitted) {
        Optional<Fit.Found> found = fitted.fit() instanceof Fit.Found clock ? Optional.of(clock) : Optional.empty();
        return new FittedClock(ConstantKey.of(fitted.side()), fitted.kind().map(SiteKind::id), fitted.fit().runs(),
                fitted.fit().stops(), found.isPresent(),
                found.map(fit -> Likeliest.of(fit.clock().shape(), fit.shape())),
                found.map(fit -> Likeliest.of(fit.clock().scale(), fit.scale())),
                found.map(fit -> FitSettings.bySix(fit.clock())), found.map(fit -> FitSettings.byTwelve(fit.clock())),
                found.map(Fit.Found::mayBeRandom), fitted.season().map(Season::of));
    }
}

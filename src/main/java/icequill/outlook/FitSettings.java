package icequill.outlook;

import icequill.explain.ConstantKey;
import icequill.forecast.Decimals;
import icequill.forecast.fit.Fit;
import icequill.forecast.fit.StopSeason;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.stops.FoulingLife;
import icequill.party.SiteKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** What was fitted, as lines for the shop's file. */
public final class FitSettings {

    private static final int DIGITS = 2;
    private static final BigDecimal FEWEST = new BigDecimal("0.01");
    private static final BigDecimal MOST = new BigDecimal("19.98");
    private static final int HALF_YEAR = 6;
    private static final int YEAR = 12;

    private FitSettings() {
    }

    /**
     * Of the fits, those by which dirt does not get safer with time, as lines for the shop's file: all sites, then each kind. Those of
     * kinds have braces, so that no line begins with more than two spaces, which a reader aloud would take for a drawing.
     */
    static List<String> of(List<SideFit> fits) {
        List<String> lines = new ArrayList<>();
        fits.stream().filter(fitted -> fitted.kind().isEmpty()).map(FitSettings::settings)
                .filter(settings -> !settings.isEmpty()).forEach(settings -> {
                    lines.add(settings.getFirst());
                    settings.stream().skip(1).forEach(line -> lines.add("  " + line));
                });
        List<String> byKind = fits.stream().flatMap(fitted -> fitted.kind().stream()).distinct()
                .sorted(Comparator.comparing(SiteKind::id))
                .flatMap(kind -> settings(fits, kind).stream()).toList();
        if (!byKind.isEmpty()) {
            lines.add("byKind:");
            lines.addAll(byKind);
        }
        List<String> seasons = fits.stream().flatMap(fitted -> fitted.season()
                .filter(StopSeason.Found.class::isInstance).map(StopSeason.Found.class::cast)
                .map(found -> "  " + ConstantKey.of(fitted.side()) + ": " + found.factors().stream()
                        .map(BigDecimal::toPlainString).collect(Collectors.joining(", ", "[", "]")))
                .stream()).toList();
        if (!seasons.isEmpty()) {
            lines.add("seasons:");
            lines.addAll(seasons);
        }
        return lines;
    }

    private static List<String> settings(List<SideFit> fits, SiteKind kind) {
        List<String> sides = fits.stream().filter(fitted -> fitted.kind().filter(kind::equals).isPresent())
                .map(FitSettings::settings).filter(settings -> !settings.isEmpty())
                .map(settings -> "  " + settings.getFirst() + " {"
                        + settings.stream().skip(1).map(line -> "\n  " + line).collect(Collectors.joining(",")) + "}")
                .toList();
        return sides.isEmpty()
                ? List.of()
                : (" " + kind.id() + ": {\n" + String.join(",\n", sides) + "}").lines().toList();
    }

    /** The side, then what is known of it. */
    private static List<String> settings(SideFit fitted) {
        if (!(fitted.fit() instanceof Fit.Found found) || found.clock().shape() < 1) {
            return List.of();
        }
        FoulingLife clock = found.clock();
        return List.of(ConstantKey.of(fitted.side()) + ":", "usual: " + counts(clock),
                "low: " + counts(new FoulingLife(clock.shape(), Math.min(found.scale().high(), clock.scale() * YEAR))),
                "high: " + counts(new FoulingLife(clock.shape(), found.scale().low())), "runs: " + found.runs());
    }

    private static String counts(FoulingLife clock) {
        return "{by6: " + bySix(clock).toPlainString() + ", by12: " + byTwelve(clock).toPlainString() + "}";
    }

    /** Rounded down, so that dirt never gets safer with time by what is printed and put into the shop's file. */
    public static BigDecimal bySix(FoulingLife clock) {
        return Decimals.down(FoulingEstimate.Stops.OF * clock.chanceBy(HALF_YEAR), DIGITS).max(FEWEST)
                .min(MOST.subtract(FEWEST));
    }

    /** Rounded up, for the same reason. */
    public static BigDecimal byTwelve(FoulingLife clock) {
        return Decimals.up(FoulingEstimate.Stops.OF * clock.chanceBy(YEAR), DIGITS).max(FEWEST.add(FEWEST)).min(MOST);
    }
}

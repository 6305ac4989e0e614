package icequill.outlook;

import icequill.document.FitSheet;
import icequill.document.FitSheet.Plot;
import icequill.document.FitSheet.Point;
import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.Decimals;
import icequill.forecast.fit.DatedRun;
import icequill.forecast.fit.Fit;
import icequill.forecast.fit.Run;
import icequill.forecast.fit.SeasonSearch;
import icequill.forecast.fit.Side;
import icequill.forecast.fit.StopSeason;
import icequill.forecast.fit.WeibullFit;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.Pace;
import icequill.party.Shop;
import icequill.party.SiteKind;
import icequill.problem.Checked;
import icequill.problem.Problems;
import icequill.request.PaperOptions;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Fits the clocks of both sides to recorded runs, at all sites together and at each kind of site. */
public record FitAssembly(Shop shop, String table, RecordedRuns recorded) {

    private static final int DIGITS = 2;
    private static final BigDecimal FEWEST = new BigDecimal("0.01");
    private static final BigDecimal MOST = new BigDecimal("19.98");
    private static final int CURVE = 40;
    private static final int HALF_YEAR = 6;
    private static final int YEAR = 12;

    /**
     * One fit.
     *
     * @param kind of the sites; empty for all
     * @param season of the stops, which is looked for at all sites together; empty at one kind
     */
    public record Fitted(Side side, Optional<SiteKind> kind, Fit fit, Optional<StopSeason> season) {}

    /** All fits, each side's for all sites first. */
    public Checked<List<Fitted>> fits() {
        Problems problems = new Problems();
        List<Fitted> fits = new ArrayList<>();
        for (Side side : Side.values()) {
            List<DatedRun> runs = recorded.of(side);
            if (!runs.isEmpty()) {
                fits.addAll(fits(side, runs, problems));
            }
        }
        return problems.or(() -> fits);
    }

    /** Where stops have a season that nobody knew, months count by it. */
    private List<Fitted> fits(Side side, List<DatedRun> dated, Problems problems) {
        Pace known = recorded.pace(side);
        Optional<Fit> plain = problems.take(WeibullFit.of(at(known, dated)));
        StopSeason season = plain.filter(Fit.Found.class::isInstance).map(Fit.Found.class::cast)
                .map(found -> new SeasonSearch(dated, known).with(found.clock()))
                .orElseGet(StopSeason.NotLookedAt::new);
        List<Run> runs = season instanceof StopSeason.Found found
                ? at(Pace.ofQuarters(found.factors().stream().map(BigDecimal::doubleValue).toList()), dated)
                : at(known, dated);
        List<Fitted> fits = new ArrayList<>();
        plain.flatMap(same -> season instanceof StopSeason.Found
                ? problems.take(WeibullFit.of(runs))
                : Optional.of(same))
                .ifPresent(fit -> fits.add(new Fitted(side, Optional.empty(), fit, Optional.of(season))));
        if (runs.stream().map(Run::kind).distinct().count() > 1) {
            problems.take(WeibullFit.byKind(runs)).ifPresent(byKind -> byKind.forEach(
                    (kind, fit) -> fits.add(new Fitted(side, Optional.of(kind), fit, Optional.empty()))));
        }
        return fits;
    }

    private static List<Run> at(Pace pace, List<DatedRun> dated) {
        return dated.stream().map(run -> run.at(pace)).toList();
    }

    public FitSheet sheet(PaperOptions options, List<Fitted> fits) {
        return new FitSheet(options.date(), shop, options.language().orElse(shop.language()), shop.paper(), table,
                fits.stream().map(FitAssembly::plot).toList(), notes(), settings(fits));
    }

    /** How the table was read. */
    private List<Phrase> notes() {
        List<Phrase> notes = new ArrayList<>();
        if (recorded.isScaled()) {
            notes.add(Phrase.of("fit.scaled"));
        }
        if (recorded.rates().filter(rates -> rates.callsThatClean().isZero()).isPresent()) {
            notes.add(Phrase.of("fit.restarts"));
        }
        if (recorded.hasSeasons()) {
            notes.add(Phrase.of("fit.seasons-set"));
        }
        notes.add(Phrase.of("fit.random-season"));
        if (recorded.leftOut() > 0) {
            notes.add(Phrase.of("fit.left-out", Fact.number(recorded.leftOut(), "run")));
        }
        return notes;
    }

    private static Plot plot(Fitted fitted) {
        Phrase title = Phrase.of("fit." + ConstantKey.of(fitted.side()), fitted.kind()
                .<Fact>map(kind -> new Fact.Named(kind.name().english(), kind.name().spanish()))
                .orElse(new Fact.Word("fit.all")));
        Stream<Phrase> season = fitted.season().stream().map(FitAssembly::said);
        return switch (fitted.fit()) {
        case Fit.TooFew few -> new Plot(title, Stream.concat(Stream.of(counted(few),
                Phrase.of("fit.too-few", Fact.number(Fit.FEWEST_STOPS, ""))), season).toList(), List.of(), List.of());
        case Fit.Found found -> new Plot(title, Stream.concat(said(found).stream(), season).toList(), points(found),
                curve(found));
        };
    }

    private static Phrase said(StopSeason season) {
        return switch (season) {
        case StopSeason.NotLookedAt few -> Phrase.of("fit.season.not-looked-at",
                Fact.number(StopSeason.FEWEST_EXPECTED, ""));
        case StopSeason.NoneFound none -> Phrase.of("fit.season.none", quarters(none).toArray(Fact[]::new));
        case StopSeason.Found found -> Phrase.of("fit.season.found", Stream.concat(quarters(found),
                found.factors().stream().map(factor -> new Fact.Measure(factor, ""))).toArray(Fact[]::new));
        };
    }

    /** Stops by quarter, those expected, chi-square and what it is held against. */
    private static Stream<Fact> quarters(StopSeason.LookedAt season) {
        return Stream.of(
                season.quarters().stream().map(quarter -> Fact.number(quarter.stops(), "")),
                season.quarters().stream()
                        .map(quarter -> new Fact.Measure(Decimals.of(quarter.expected(), 1), "")),
                Stream.of(measure(season.chiSquare()), measure(StopSeason.THRESHOLD)))
                .<Fact>flatMap(Function.identity());
    }

    private static Phrase counted(Fit fit) {
        return Phrase.of("fit.counted", Fact.number(fit.runs(), ""), Fact.number(fit.stops(), ""));
    }

    private static List<Phrase> said(Fit.Found found) {
        List<Phrase> said = new ArrayList<>(List.of(counted(found),
                Phrase.of("fit.shape", measure(found.clock().shape()), measure(found.shape().low()),
                        limit(found.shape().high())),
                Phrase.of("fit.scale", measure(found.clock().scale()), measure(found.scale().low()),
                        limit(found.scale().high())),
                Phrase.of("fit.of-twenty", Fact.number(FoulingEstimate.Stops.OF, ""),
                        new Fact.Measure(bySix(found.clock()), ""),
                        new Fact.Measure(byTwelve(found.clock()), ""))));
        if (found.mayBeRandom()) {
            said.add(Phrase.of("fit.may-be-random"));
        }
        return said;
    }

    private static Fact measure(double value) {
        return new Fact.Measure(hundredths(value), "");
    }

    private static Fact limit(double value) {
        return Double.isInfinite(value) ? new Fact.Word("fit.no-limit") : measure(value);
    }

    private static BigDecimal hundredths(double value) {
        return Decimals.of(value, DIGITS);
    }

    private static BigDecimal stopped(FoulingLife clock, double months) {
        return hundredths(FoulingEstimate.Stops.OF * clock.chanceBy(months));
    }

    private static List<Point> points(Fit.Found found) {
        return found.points().stream()
                .map(point -> new Point(hundredths(point.months()),
                        hundredths(FoulingEstimate.Stops.OF * point.observed())))
                .toList();
    }

    private static List<Point> curve(Fit.Found found) {
        double last = Math.max(YEAR, found.points().getLast().months());
        return IntStream.rangeClosed(0, CURVE).mapToDouble(i -> last * i / CURVE)
                .mapToObj(month -> new Point(hundredths(month), stopped(found.clock(), month))).toList();
    }

    /**
     * Of the fits, those by which dirt does not get safer with time, as lines for the shop's file: all sites, then each kind. Those of
     * kinds have braces, so that no line begins with more than two spaces, which a reader aloud would take for a drawing.
     */
    private static List<String> settings(List<Fitted> fits) {
        List<String> lines = new ArrayList<>();
        fits.stream().filter(fitted -> fitted.kind().isEmpty()).map(FitAssembly::settings)
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

    private static List<String> settings(List<Fitted> fits, SiteKind kind) {
        List<String> sides = fits.stream().filter(fitted -> fitted.kind().filter(kind::equals).isPresent())
                .map(FitAssembly::settings).filter(settings -> !settings.isEmpty())
                .map(settings -> "  " + settings.getFirst() + " {"
                        + settings.stream().skip(1).map(line -> "\n  " + line).collect(Collectors.joining(",")) + "}")
                .toList();
        return sides.isEmpty()
                ? List.of()
                : (" " + kind.id() + ": {\n" + String.join(",\n", sides) + "}").lines().toList();
    }

    /** The side, then what is known of it. */
    private static List<String> settings(Fitted fitted) {
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
    private static BigDecimal bySix(FoulingLife clock) {
        return Decimals.down(FoulingEstimate.Stops.OF * clock.chanceBy(HALF_YEAR), DIGITS).max(FEWEST)
                .min(MOST.subtract(FEWEST));
    }

    /** Rounded up, for the same reason. */
    private static BigDecimal byTwelve(FoulingLife clock) {
        return Decimals.up(FoulingEstimate.Stops.OF * clock.chanceBy(YEAR), DIGITS).max(FEWEST.add(FEWEST)).min(MOST);
    }

    /** As data, in the order of the fits. */
    public static List<Map<String, Object>> json(List<Fitted> fits) {
        return fits.stream().map(FitAssembly::json).toList();
    }

    private static Map<String, Object> json(Fitted fitted) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("side", ConstantKey.of(fitted.side()));
        view.put("kind", fitted.kind().map(SiteKind::id).orElse(null));
        view.put("runs", fitted.fit().runs());
        view.put("stops", fitted.fit().stops());
        view.put("fitted", fitted.fit() instanceof Fit.Found);
        if (fitted.fit() instanceof Fit.Found found) {
            view.put("shape", limits(found.clock().shape(), found.shape()));
            view.put("scaleMonths", limits(found.clock().scale(), found.scale()));
            view.put("by6", bySix(found.clock()));
            view.put("by12", byTwelve(found.clock()));
            view.put("mayBeRandom", found.mayBeRandom());
        }
        view.put("season", fitted.season().map(FitAssembly::json).orElse(null));
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

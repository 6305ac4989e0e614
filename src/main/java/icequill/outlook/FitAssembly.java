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
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.work.Visit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Fits the clocks of both sides to recorded runs, at all sites together and at each kind of site. */
public record FitAssembly(Shop shop, Source source, RecordedRuns recorded) {

    /** Where the records stand. */
    public sealed interface Source {}

    /** A table, by its name. */
    public record InTable(String name) implements Source {}

    /**
     * The visits of the shop's book.
     *
     * @param since the day of the first
     * @param unknown calls of which nobody knows what for, or at which machine
     */
    public record InBook(int sites, int visits, LocalDate since, int calls, int unknown) implements Source {

        /** Of sites, at least one of which had a visit. */
        public static InBook of(List<SiteRecords> sites) {
            return new InBook(sites.size(), sites.stream().mapToInt(site -> site.visits().size()).sum(),
                    sites.stream().flatMap(site -> site.visits().stream()).map(Visit::day)
                            .min(Comparator.naturalOrder()).orElseThrow(),
                    (int) sites.stream().flatMap(SiteRecords::calls).count(),
                    sites.stream().mapToInt(SiteRecords::callsUnknown).sum());
        }
    }

    private static final int DIGITS = 2;
    private static final int CURVE = 40;
    private static final int YEAR = 12;

    /** All fits, each side's for all sites first. */
    public Validated<List<SideFit>> fits() {
        Problems problems = new Problems();
        List<SideFit> fits = new ArrayList<>();
        for (Side side : Side.values()) {
            List<DatedRun> runs = recorded.of(side);
            if (!runs.isEmpty()) {
                fits.addAll(fits(side, runs, problems));
            }
        }
        return problems.or(() -> fits);
    }

    /** Where stops have a season that nobody knew, months count by it. */
    private List<SideFit> fits(Side side, List<DatedRun> dated, Problems problems) {
        Pace known = recorded.pace(side);
        Optional<Fit> plain = problems.take(WeibullFit.of(at(known, dated)));
        StopSeason season = plain.filter(Fit.Found.class::isInstance).map(Fit.Found.class::cast)
                .map(found -> new SeasonSearch(dated, known).with(found.clock()))
                .orElseGet(StopSeason.NotLookedAt::new);
        List<Run> runs = season instanceof StopSeason.Found found
                ? at(Pace.ofQuarters(found.factors().stream().map(BigDecimal::doubleValue).toList()), dated)
                : at(known, dated);
        List<SideFit> fits = new ArrayList<>();
        plain.flatMap(same -> season instanceof StopSeason.Found
                ? problems.take(WeibullFit.of(runs))
                : Optional.of(same))
                .ifPresent(fit -> fits.add(new SideFit(side, Optional.empty(), fit, Optional.of(season))));
        if (runs.stream().map(Run::kind).distinct().count() > 1) {
            problems.take(WeibullFit.byKind(runs)).ifPresent(byKind -> byKind.forEach(
                    (kind, fit) -> fits.add(new SideFit(side, Optional.of(kind), fit, Optional.empty()))));
        }
        return fits;
    }

    private static List<Run> at(Pace pace, List<DatedRun> dated) {
        return dated.stream().map(run -> run.at(pace)).toList();
    }

    public FitSheet sheet(PaperOptions options, List<SideFit> fits) {
        return new FitSheet(options.date(), shop, options.language().orElse(shop.language()), shop.paper(),
                source instanceof InTable(String name) ? Optional.of(name) : Optional.empty(),
                fits.stream().map(FitAssembly::plot).toList(), notes(), FitSettings.of(fits));
    }

    /** How the records were read. */
    private List<Phrase> notes() {
        List<Phrase> notes = new ArrayList<>();
        if (source instanceof InBook book) {
            notes.add(Phrase.of("fit.from-book", Fact.number(book.visits(), "visit"), Fact.number(book.sites(), ""),
                    new Fact.Day(book.since()), Fact.number(book.calls(), "call"),
                    Fact.number(book.unknown(), "")));
        }
        if (recorded.isScaled()) {
            notes.add(Phrase.of("fit.scaled"));
        }
        if (recorded.rates().filter(rates -> rates.callsThatClean().isZero()).isPresent()) {
            notes.add(Phrase.of("fit.restarts"));
        }
        if (recorded.hasSeasons()) {
            notes.add(Phrase.of("fit.seasons-set"));
        }
        if (source instanceof InTable) {
            notes.add(Phrase.of("fit.random-season"));
        }
        if (recorded.leftOut() > 0) {
            notes.add(Phrase.of("fit.left-out", Fact.number(recorded.leftOut(), "run")));
        }
        return notes;
    }

    private static Plot plot(SideFit fitted) {
        Phrase title = Phrase.of("fit." + ConstantKey.of(fitted.side()), fitted.kind()
                .<Fact>map(kind -> kind.name().named())
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
                        new Fact.Measure(FitSettings.bySix(found.clock()), ""),
                        new Fact.Measure(FitSettings.byTwelve(found.clock()), ""))));
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

}

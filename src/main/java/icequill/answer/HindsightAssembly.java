package icequill.answer;

import icequill.explain.ConstantKey;
import icequill.forecast.Cause;
import icequill.forecast.stops.CountDistribution;
import icequill.outlook.KnownSite;
import icequill.outlook.SiteYear;
import icequill.plans.EstimateLevels.Level;
import icequill.work.Visit;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lays the years of all sites together. */
public record HindsightAssembly(YearSpan span, List<SiteYear> years, List<NewerSite> newer) {

    /** What one site's year comes to, in all and by cause. */
    private record Held(SiteYear year, CallsComparison site, Map<Cause, CallsComparison> causes, int unknown) {}

    public Hindsight hindsight() {
        List<Held> held = years.stream().map(HindsightAssembly::held).toList();
        List<CallsComparison> causes = Arrays.stream(Cause.values()).map(cause -> held.stream()
                .flatMap(site -> Stream.ofNullable(site.causes().get(cause)))
                .reduce(CallsComparison.none(ConstantKey.of(cause)), CallsComparison::plus)).toList();
        return new Hindsight(span, held.stream().map(Held::site).toList(), causes,
                held.stream().mapToInt(Held::unknown).sum(), years.stream().mapToInt(SiteYear::callbacks).sum(),
                years.stream().filter(year -> !year.hasVisit()).map(year -> year.site().id()).toList(), newer);
    }

    private static Held held(SiteYear year) {
        Map<Optional<Cause>, List<Visit>> calls = year.calls().stream()
                .collect(Collectors.groupingBy(call -> year.work().cause(call, year.site())));
        int unknown = calls.getOrDefault(Optional.<Cause>empty(), List.of()).size();
        Map<Level, KnownSite> expected = new EnumMap<>(Level.class);
        Stream.of(Level.values()).forEach(level -> expected.put(level, year.expected(level)));
        Map<Cause, CallsComparison> causes = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            int sure = calls.getOrDefault(Optional.of(cause), List.of()).size();
            causes.put(cause,
                    new CallsComparison(ConstantKey.of(cause), counts(expected, site -> site.calls(cause)), sure,
                            sure + unknown));
        }
        int all = year.calls().size();
        return new Held(year, new CallsComparison(year.site().id(), counts(expected, KnownSite::calls), all, all),
                causes,
                unknown);
    }

    private static Map<Level, CountDistribution> counts(Map<Level, KnownSite> expected,
            Function<KnownSite, CountDistribution> part) {
        Map<Level, CountDistribution> counts = new EnumMap<>(Level.class);
        expected.forEach((level, site) -> counts.put(level, part.apply(site)));
        return counts;
    }
}

package icequill.answer;

import icequill.explain.ConstantKey;
import icequill.forecast.Cause;
import icequill.forecast.CountDistribution;
import icequill.outlook.SiteYear;
import icequill.plans.SiteRisks.Level;
import icequill.work.Visit;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lays the years of all sites together. */
public record HindsightAssembly(YearSpan span, List<SiteYear> years, List<NewerSite> newer) {

    /** What one site's year comes to, by cause. */
    private record Held(SiteYear year, Map<Cause, CallsComparison> causes, int unknown) {

        CallsComparison site() {
            int calls = year.calls().size();
            return new CallsComparison(year.site().id(),
                    causes.values().stream().reduce(CallsComparison.none(""), CallsComparison::plus).expected(), calls,
                    calls);
        }
    }

    public Hindsight hindsight() {
        List<Held> held = years.stream().map(HindsightAssembly::held).toList();
        List<CallsComparison> causes = Arrays.stream(Cause.values()).map(cause -> held.stream()
                .flatMap(site -> Stream.ofNullable(site.causes().get(cause)))
                .reduce(CallsComparison.none(word(cause)), CallsComparison::plus)).toList();
        return new Hindsight(span, held.stream().map(Held::site).toList(), causes,
                held.stream().mapToInt(Held::unknown).sum(), years.stream().mapToInt(SiteYear::callbacks).sum(),
                years.stream().filter(year -> !year.hasVisit()).map(year -> year.site().id()).toList(), newer);
    }

    private static Held held(SiteYear year) {
        Map<Optional<Cause>, List<Visit>> calls = year.calls().stream()
                .collect(Collectors.groupingBy(call -> year.work().cause(call, year.site())));
        int unknown = calls.getOrDefault(Optional.<Cause>empty(), List.of()).size();
        Map<Level, Map<Cause, CountDistribution>> expected = new EnumMap<>(Level.class);
        Stream.of(Level.values()).forEach(level -> expected.put(level, year.expected(level)));
        Map<Cause, CallsComparison> held = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            Map<Level, CountDistribution> own = new EnumMap<>(Level.class);
            expected.forEach((level, counts) -> own.put(level, counts.getOrDefault(cause, CountDistribution.NONE)));
            int sure = calls.getOrDefault(Optional.of(cause), List.of()).size();
            held.put(cause, new CallsComparison(word(cause), own, sure, sure + unknown));
        }
        return new Held(year, held, unknown);
    }

    private static String word(Cause cause) {
        return ConstantKey.of(cause);
    }
}

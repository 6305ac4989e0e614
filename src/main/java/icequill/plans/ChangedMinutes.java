package icequill.plans;

import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.pricer.StaffedVisit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** By which minutes a change in mid-term was priced. */
record ChangedMinutes(PricedPlan before, PricedPlan after) {

    private static final String MINUTE = "min";

    /** One sentence for each scope, by its first visit. */
    List<Phrase> phrases() {
        Map<String, TimedVisit> old = byScope(before);
        return byScope(after).entrySet().stream().map(entry -> phrase(
                Objects.requireNonNull(old.get(entry.getKey()), "the tier of both has the same scopes"),
                entry.getValue())).toList();
    }

    private static Map<String, TimedVisit> byScope(PricedPlan plan) {
        Map<String, TimedVisit> first = new LinkedHashMap<>();
        plan.crews().forEach(crew -> first.putIfAbsent(crew.staffed().visit().slot().scope().id(), crew));
        return first;
    }

    private static Phrase phrase(TimedVisit old, TimedVisit now) {
        var name = now.staffed().visit().slot().scope().name();
        Fact scope = name.named();
        return now.perhapsTooLong() == 0
                ? Phrase.of("reason.change-minutes", scope, minutes(now), minutes(old),
                        new Fact.Word("minutes-from." + ConstantKey.of(now.from())))
                : Phrase.of("reason.change-minutes-unproven", scope, minutes(now), minutes(old),
                        Fact.number(now.perhapsTooLong(), MINUTE));
    }

    private static Fact minutes(TimedVisit crew) {
        return Fact.number(crew.staffed().crew().stream().mapToInt(StaffedVisit.Person::minutes).max().orElseThrow(),
                MINUTE);
    }
}

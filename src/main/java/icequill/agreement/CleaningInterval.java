package icequill.agreement;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Conditions;
import icequill.party.Conditions.Air;
import icequill.party.SiteKind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * How many months apart full cleanings should be. It is a recommendation: no code fixes a number of days (Food Code
 * 4-602.11: at the maker's interval or, where none is stated, often enough to prevent soil and mold).
 *
 * @param months from 1 to 6
 * @param reasons in the order in which they bear on it
 */
public record CleaningInterval(int months, List<Phrase> reasons) {

    /** Common practice; hygiene, so no price makes it longer. */
    private static final int MOST = 6;
    /** Common practice where there is much yeast in the air. */
    private static final int MOST_WITH_YEAST = 3;
    private static final String MONTH = "month";

    public CleaningInterval {
        reasons = List.copyOf(reasons);
    }

    /**
     * Six months, three with much yeast in the air, never longer than the maker's interval, less the shop's steps for hard
     * water, heat and grease, though at least one month.
     */
    public static CleaningInterval of(SiteKind kind, Conditions conditions, IntervalRules rules) {
        int months = MOST;
        List<Phrase> reasons = new ArrayList<>(List.of(Phrase.of("reason.interval-usual", months(MOST))));
        if (kind.air().contains(Air.YEAST)) {
            months = MOST_WITH_YEAST;
            reasons.add(Phrase.of("reason.interval-yeast-kind",
                    kind.name().named(),
                    months(MOST_WITH_YEAST)));
        } else if (conditions.air().contains(Air.YEAST)) {
            months = MOST_WITH_YEAST;
            reasons.add(Phrase.of("reason.interval-yeast", months(MOST_WITH_YEAST)));
        }
        int stated = conditions.makersMonths().orElse(months);
        if (stated < months) {
            months = stated;
            reasons.add(Phrase.of("reason.interval-maker", months(stated)));
        }
        Set<Air> air = EnumSet.noneOf(Air.class);
        air.addAll(kind.air());
        air.addAll(conditions.air());
        int shorter = shorter(conditions, air, rules, reasons);
        months = Math.max(1, months - shorter);
        reasons.add(Phrase.of("reason.interval-recommended"));
        return new CleaningInterval(months, reasons);
    }

    private static int shorter(Conditions conditions, Set<Air> air, IntervalRules rules, List<Phrase> reasons) {
        int sum = 0;
        if (rules.hardWater() > 0
                && conditions.hardness().filter(found -> found.compareTo(rules.hardFrom()) >= 0).isPresent()) {
            sum += rules.hardWater();
            reasons.add(Phrase.of("reason.interval-hard-water",
                    new Fact.Measure(conditions.hardness().orElseThrow(), ""), months(rules.hardWater())));
        }
        if (rules.heat() > 0 && air.contains(Air.HEAT)) {
            sum += rules.heat();
            reasons.add(Phrase.of("reason.interval-heat", months(rules.heat())));
        }
        if (rules.grease() > 0 && air.contains(Air.GREASE)) {
            sum += rules.grease();
            reasons.add(Phrase.of("reason.interval-grease", months(rules.grease())));
        }
        return sum;
    }

    private static Fact months(int months) {
        return Fact.number(months, MONTH);
    }
}

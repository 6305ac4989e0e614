package icequill.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.RatesFixture;
import icequill.explain.Phrase;
import icequill.files.pricing.SiteKindsReader;
import icequill.party.Conditions;
import icequill.party.Conditions.Air;
import icequill.party.SiteKind;
import icequill.party.Wording;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Six months, three with yeast: common practice. That no code fixes a number: Food Code 4-602.11. */
class CleaningIntervalTest {

    private static final IntervalRules RULES = new IntervalRules(new BigDecimal("181"), 1, 1, 2);

    /** Kind, maker's months, hardness, what is in the air, and the months and deciding reasons worked by hand. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            office  |    |       |             | 6 | usual
            bakery  |    |       |             | 3 | usual yeast-kind
            pizza   |    |       |             | 3 | usual yeast-kind
            brewery |    |       |             | 3 | usual yeast-kind
            taproom |    |       |             | 3 | usual yeast-kind
            bar     |    |       | YEAST       | 3 | usual yeast
            office  | 12 |       |             | 6 | usual
            bakery  | 6  |       |             | 3 | usual yeast-kind
            clinic  | 4  |       |             | 4 | usual maker
            office  |    | 180.9 |             | 6 | usual
            office  |    | 181   |             | 5 | usual hard-water
            hotel   |    | 300   | HEAT        | 4 | usual hard-water heat
            hotel   | 5  | 300   | HEAT GREASE | 1 | usual maker hard-water heat grease
            bakery  |    | 300   | HEAT GREASE | 1 | usual yeast-kind hard-water heat grease
            """)
    void of_siteAndConditions_monthsAndReasons(String kind, @Nullable Integer maker, @Nullable BigDecimal hardness,
            @Nullable String air, int months,
            String reasons) {
        CleaningInterval interval = CleaningInterval.of(RatesFixture.kind(kind), conditions(maker, hardness, air),
                RULES);

        assertThat(interval.months()).isEqualTo(months);
        assertThat(keys(interval)).containsExactlyElementsOf(List.of((reasons + " recommended").split(" ")));
    }

    @Test
    void of_stepsNotSet_notMentioned() {
        CleaningInterval interval = CleaningInterval.of(RatesFixture.kind("office"),
                conditions(null, new BigDecimal("400"), "HEAT GREASE"), new IntervalRules(BigDecimal.ZERO, 0, 0, 0));

        assertThat(interval.months()).isEqualTo(6);
        assertThat(keys(interval)).containsExactly("usual", "recommended");
    }

    /** Hygiene: nothing makes the interval longer than its cap, and nothing that is known makes it longer at all. */
    @Property(tries = 500, seed = "46021")
    void of_anything_withinItsCap(@ForAll("kinds") SiteKind kind, @ForAll @IntRange(min = 1, max = 60) int maker,
            @ForAll @IntRange(min = 0, max = 500) int hardness, @ForAll Set<Air> air,
            @ForAll @IntRange(min = 0, max = 5) int step) {
        IntervalRules rules = new IntervalRules(new BigDecimal("181"), step, step, step);

        CleaningInterval interval = CleaningInterval.of(kind,
                new Conditions(Optional.of(maker), Optional.of(BigDecimal.valueOf(hardness)), air), rules);

        assertThat(interval.months()).isBetween(1, Math.min(6, Math.max(1, maker)))
                .isLessThanOrEqualTo(CleaningInterval.of(kind, Conditions.UNKNOWN, rules).months());
    }

    @ParameterizedTest
    @MethodSource
    void tiers_semiannualAndQuarterly_theOneForYeastIsQuarterly(SiteKind kind) {
        CleaningInterval interval = CleaningInterval.of(kind, Conditions.UNKNOWN, RULES);
        boolean yeast = Set.of("bakery", "pizza", "brewery", "taproom").contains(kind.id());

        assertThat(RatesFixture.tier("semiannual", 2).meets(interval)).isEqualTo(!yeast);
        assertThat(RatesFixture.tier("quarterly", 4).meets(interval)).isTrue();
    }

    static List<SiteKind> tiers_semiannualAndQuarterly_theOneForYeastIsQuarterly() {
        return SiteKindsReader.read(List.of()).all();
    }

    @Provide
    Arbitrary<SiteKind> kinds() {
        return Arbitraries.of(SiteKindsReader.read(List.of()).all());
    }

    /** What a kind has in its air counts as if it stood at the site. */
    @Test
    void of_kindWithHeatAndGrease_shorter() {
        SiteKind truck = new SiteKind("food-truck", Wording.same("food truck"), Set.of(Air.HEAT, Air.GREASE));

        CleaningInterval interval = CleaningInterval.of(truck, conditions(null, null, "HEAT"), RULES);

        assertThat(keys(interval)).containsExactly("usual", "heat", "grease", "recommended");
        assertThat(interval).isEqualTo(
                CleaningInterval.of(RatesFixture.kind("office"), conditions(null, null, "HEAT GREASE"), RULES));
    }

    private static List<String> keys(CleaningInterval interval) {
        return interval.reasons().stream().map(Phrase::key).map(key -> key.replace("reason.interval-", "")).toList();
    }

    private static Conditions conditions(@Nullable Integer maker, @Nullable BigDecimal hardness, @Nullable String air) {
        EnumSet<Air> found = EnumSet.noneOf(Air.class);
        if (air != null) {
            List.of(air.split(" ")).forEach(name -> found.add(Air.valueOf(name)));
        }
        return new Conditions(Optional.ofNullable(maker), Optional.ofNullable(hardness), found);
    }
}

package icequill.party;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import icequill.RatesFixture;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.rates.RateSchedule;
import icequill.rates.RefrigerantRules;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DatedTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource({"2025-12-31, ", "2026-01-01, old", "2026-06-30, old", "2026-07-01, new", "2030-01-01, new"})
    void at_day_halfOpenPeriods(LocalDate day, String value) {
        Timeline<String> timeline = Timeline
                .of(List.of(entry("new", "2026-07-01", null), entry("old", "2026-01-01", "2026-07-01"))).orElseThrow();

        assertThat(timeline.at(day)).isEqualTo(Optional.ofNullable(value));
    }

    @Test
    void of_overlap_reportedWithBothPlaces() {
        List<Problem> problems = Timeline
                .of(List.of(entry("old", "2026-01-01", null), entry("new", "2026-07-01", "2027-01-01"))).problems();

        assertThat(problems).extracting(Problem::code).containsExactly(Code.OVERLAP);
        assertThat(problems.getFirst().text()).contains("new.yaml:3", "old.yaml:3", "2026-07-01 to 2027-01-01",
                "from 2026-01-01");
    }

    @Test
    void of_overlapAcrossAnotherEntry_reportedToo() {
        List<Problem> problems = Timeline.of(List.of(entry("whole", "2026-01-01", null),
                entry("spring", "2026-03-01", "2026-06-01"), entry("autumn", "2026-09-01", "2026-12-01"))).problems();

        assertThat(problems).extracting(problem -> problem.place().file()).containsExactly("spring.yaml",
                "autumn.yaml");
    }

    @ParameterizedTest(name = "from {0}")
    @CsvSource({"2026-05-01, old, other, other", "2026-07-01, old, other, other", "2026-01-01, other, other, other"})
    void from_aDay_whatHeldEndsAndWhatWasToComeIsLeftOut(LocalDate day, String april, String may, String next) {
        Timeline<String> timeline = Timeline
                .of(List.of(entry("old", "2026-01-01", "2026-07-01"), entry("new", "2026-07-01", null))).orElseThrow()
                .from(day, "other", Place.NOWHERE);

        assertThat(timeline.at(LocalDate.of(2026, 4, 30))).contains(april);
        assertThat(timeline.at(day)).contains(may);
        assertThat(timeline.at(LocalDate.of(2027, 1, 1))).contains(next);
    }

    @Test
    void corrected_aDay_onlyThatEntryChanges() {
        Timeline<String> timeline = Timeline
                .of(List.of(entry("old", "2026-01-01", "2026-07-01"), entry("new", "2026-07-01", null))).orElseThrow();

        Timeline<String> before = timeline.corrected(LocalDate.of(2026, 6, 30), "right");
        Timeline<String> none = timeline.corrected(LocalDate.of(2025, 1, 1), "right");

        assertThat(before.entries()).extracting(Timeline.Entry::value).containsExactly("right", "new");
        assertThat(none.entries()).extracting(Timeline.Entry::value).containsExactly("old", "right");
        assertThat(new Timeline<String>(List.of()).corrected(LocalDate.of(2025, 1, 1), "right")
                .at(LocalDate.of(1999, 1, 1))).contains("right");
    }

    @Test
    void period_empty_refused() {
        LocalDate day = LocalDate.of(2026, 1, 1);

        assertThatIllegalArgumentException().isThrownBy(() -> new Period(day, Optional.of(day)));
    }

    @Test
    void asOf_dayWithoutRates_oneProblemForEachKind() {
        RateSchedule schedule = new RateSchedule(RatesFixture.USD,
                Timeline.of(List.of(entry(RatesFixture.labor(), "2026-01-01", null))).orElseThrow(),
                new Timeline<>(List.of()), Timeline.always(RatesFixture.rates().materials()),
                Timeline.always(RatesFixture.rates().tasks()), Timeline.always(RatesFixture.rates().adjustments()),
                Timeline.always(RatesFixture.rates().plans()), List.of(), RefrigerantRules.NONE);

        List<Problem> problems = schedule.asOf(LocalDate.of(2025, 12, 31)).problems();

        assertThat(problems).extracting(Problem::message).containsExactly("no labor rates cover 2025-12-31",
                "no service-call rates cover 2025-12-31");
        assertThat(problems).extracting(Problem::allowed).containsExactly("covered: from 2026-01-01",
                "add a file of kind service-call");
    }

    @Test
    void lines_address_inTheOrderOfTheCountry() {
        assertThat(new Address(List.of("7 Crumb Lane"), "Alderton", "NY", "10999", "US").lines())
                .containsExactly("7 Crumb Lane", "Alderton, NY 10999");
        assertThat(new Address(List.of("Am Kai 3"), "Hafen", "", "20457", "DE").lines()).containsExactly("Am Kai 3",
                "20457 Hafen");
        assertThat(new Address(List.of("Calle 5"), "Puerto", "Sur", "", "ES").lines()).containsExactly("Calle 5",
                "Puerto, Sur");
    }

    @Test
    void wording_in_theLanguageOrEnglish() {
        assertThat(Language.ofTag("es")).contains(Language.SPANISH);
        assertThat(new Wording("ice", "hielo").in(Language.SPANISH)).isEqualTo("hielo");
        assertThat(new Wording("ice", "hielo").in(Language.ENGLISH)).isEqualTo("ice");
        assertThat(new Wording("ice", "hielo").in(new Language("fr"))).isEqualTo("ice");
    }

    private static <T> Timeline.Entry<T> entry(T value, String from, @Nullable String until) {
        return new Timeline.Entry<>(
                new Period(LocalDate.parse(from), Optional.ofNullable(until).map(LocalDate::parse)), value,
                new Place(value instanceof String name ? name + ".yaml" : "labor.yaml", 3, "effective"));
    }
}

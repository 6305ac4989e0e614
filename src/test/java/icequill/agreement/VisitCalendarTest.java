package icequill.agreement;

import static icequill.RatesFixture.tier;
import static icequill.agreement.Scope.Kind.FULL_CLEAN;
import static icequill.agreement.Scope.Kind.LIGHT_VISIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import icequill.problem.Place;
import java.time.LocalDate;
import java.time.Month;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VisitCalendarTest {

    private static final Set<Month> ALL_YEAR = Set.of();
    private static final Optional<FilterRule> SIX_MONTHS = Optional
            .of(new FilterRule("filter", Optional.empty(), 6, Place.NOWHERE));

    /** Days read off the calendar: each is the start plus so many months, cut to the month's last day where it must be. */
    @ParameterizedTest
    @CsvSource({"2026-01-31, 12, 12, 01-31 02-28 03-31 04-30 05-31 06-30 07-31 08-31 09-30 10-31 11-30 12-31",
            "2026-01-31, 12, 4, 01-31 04-30 07-31 10-31", "2026-08-31, 12, 4, 08-31 11-30 02-28 05-31",
            "2026-01-31, 12, 2, 01-31 07-31", "2026-05-10, 7, 4, 05-10 08-10 11-10", "2026-05-10, 6, 2, 05-10"})
    void of_startAtAnyDay_countedFromTheStart(LocalDate start, int months, int slots, String days) {
        VisitCalendar calendar = VisitCalendar.of(new Term(start, months), tier("any", slots), ALL_YEAR, SIX_MONTHS);

        assertThat(days(calendar)).isEqualTo(days);
        assertThat(calendar.leftOut()).isEmpty();
    }

    @Test
    void of_twoYears_slotsInOrderAndAgain() {
        Tier mixed = tier("mixed", List.of(FULL_CLEAN, LIGHT_VISIT, FULL_CLEAN, LIGHT_VISIT), IncludedCalls.NONE);

        VisitCalendar calendar = VisitCalendar.of(new Term(LocalDate.of(2026, 3, 1), 24), mixed, ALL_YEAR, SIX_MONTHS);

        assertThat(calendar.visits()).extracting(visit -> visit.slot().scope().kind()).containsExactly(FULL_CLEAN,
                LIGHT_VISIT, FULL_CLEAN, LIGHT_VISIT, FULL_CLEAN, LIGHT_VISIT, FULL_CLEAN, LIGHT_VISIT);
        assertThat(calendar.firstYear()).hasSize(4).isEqualTo(calendar.visits().subList(0, 4));
    }

    /** Worked by hand: a filter never stays in for more than the months of its rule. */
    @ParameterizedTest
    @CsvSource({"2, 6, x x", "4, 6, x - x -", "12, 6, x - - - - - x - - - - -", "3, 6, x x x", "6, 5, x - x - x -",
            "1, 6, x", "4, 12, x - - -"})
    void filters_slotsOfAYear_neverOlderThanTheRule(int slots, int months, String due) {
        VisitCalendar calendar = VisitCalendar.of(new Term(LocalDate.of(2026, 8, 31), 12), tier("any", slots),
                ALL_YEAR, Optional.of(new FilterRule("filter", Optional.empty(), months, Place.NOWHERE)));

        assertThat(calendar.visits().stream().map(visit -> visit.filtersDue() ? "x" : "-")
                .collect(Collectors.joining(" "))).isEqualTo(due);
        assertThat(VisitCalendar.of(new Term(LocalDate.of(2026, 8, 31), 12), tier("any", slots), ALL_YEAR,
                Optional.empty()).visits()).noneMatch(PlannedVisit::filtersDue);
    }

    /** A site open from May to September; quarterly from 15 January: April waits for May, October is over. */
    @Test
    void season_closedMonths_movedToTheOpeningMergedOrLeftOut() {
        Set<Month> summer = EnumSet.range(Month.MAY, Month.SEPTEMBER);

        VisitCalendar calendar = VisitCalendar.of(new Term(LocalDate.of(2026, 1, 15), 12),
                tier("mixed", List.of(LIGHT_VISIT, FULL_CLEAN, LIGHT_VISIT, FULL_CLEAN), IncludedCalls.NONE), summer,
                SIX_MONTHS);

        assertThat(days(calendar)).isEqualTo("05-01 07-15");
        assertThat(calendar.visits()).extracting(visit -> visit.slot().scope().kind()).containsExactly(FULL_CLEAN,
                LIGHT_VISIT);
        assertThat(calendar.visits().getFirst().moved().orElseThrow().key()).isEqualTo("reason.closed-moved");
        assertThat(calendar.visits().get(1).moved()).isEmpty();
        assertThat(calendar.leftOut()).extracting(out -> out.due() + " " + out.why().key()).containsExactlyInAnyOrder(
                "2026-04-15 reason.closed-then-visited", "2026-10-15 reason.closed-to-the-end");
    }

    /** Monthly from 10 March: March and April fall away because 10 May comes by itself. */
    @Test
    void season_visitDueInTheOpeningMonth_keepsItsDay() {
        VisitCalendar calendar = VisitCalendar.of(new Term(LocalDate.of(2026, 3, 10), 4), tier("monthly", 12),
                EnumSet.of(Month.MAY, Month.JUNE), SIX_MONTHS);

        assertThat(days(calendar)).isEqualTo("05-10 06-10");
        assertThat(calendar.leftOut()).extracting(VisitCalendar.LeftOut::due)
                .containsExactly(LocalDate.of(2026, 3, 10), LocalDate.of(2026, 4, 10));
    }

    @Property(tries = 500, seed = "31")
    void of_anyTerm_daysNeverDrift(@ForAll @IntRange(min = 0, max = 3000) int day,
            @ForAll @IntRange(min = 1, max = 120) int months, @ForAll @IntRange(min = 0, max = 5) int slots) {
        Term term = new Term(LocalDate.of(2024, 1, 1).plusDays(day), months);
        Tier any = tier("any", List.of(1, 2, 3, 4, 6, 12).get(slots));

        List<PlannedVisit> visits = VisitCalendar.of(term, any, ALL_YEAR, SIX_MONTHS).visits();

        assertThat(visits).isNotEmpty().allMatch(visit -> term.contains(visit.date()));
        assertThat(visits).extracting(PlannedVisit::date).isSorted().doesNotHaveDuplicates()
                .allSatisfy(date -> assertThat(date.getDayOfMonth())
                        .isEqualTo(Math.min(term.start().getDayOfMonth(), date.lengthOfMonth())));
    }

    @Property(tries = 500, seed = "59")
    void season_anyMonths_visitsInOpenMonthsAndNoneLost(@ForAll @IntRange(min = 0, max = 3000) int day,
            @ForAll @IntRange(min = 1, max = 36) int months, @ForAll @IntRange(min = 0, max = 5) int slots,
            @ForAll Set<Month> season) {
        Term term = new Term(LocalDate.of(2024, 1, 1).plusDays(day), months);
        Tier any = tier("any", List.of(1, 2, 3, 4, 6, 12).get(slots));

        VisitCalendar calendar = VisitCalendar.of(term, any, season, SIX_MONTHS);

        assertThat(calendar.visits()).allMatch(visit -> term.contains(visit.date())
                && (season.isEmpty() || season.contains(visit.date().getMonth())));
        assertThat(calendar.visits()).extracting(PlannedVisit::date).isSorted().doesNotHaveDuplicates();
        assertThat(calendar.visits().size() + calendar.leftOut().size())
                .isEqualTo((months + any.months() - 1) / any.months());
    }

    /** By hand; the gap from the last full clean goes on to the first one of the next year. */
    @ParameterizedTest
    @CsvSource({"FFFF, 3", "FLFL, 6", "FLLL, 12", "FFLL, 9", "FF, 6", "FLLFLLFLLFLL, 3"})
    void tier_fullCleans_longestGapYearAfterYear(String slots, int months) {
        List<Scope.Kind> kinds = slots.chars().mapToObj(kind -> kind == 'F' ? FULL_CLEAN : LIGHT_VISIT).toList();

        assertThat(tier("any", kinds, IncludedCalls.NONE).monthsBetweenFullCleans()).contains(months);
    }

    @Test
    void tier_noFullClean_meetsNothing() {
        Tier light = tier("light", List.of(LIGHT_VISIT, LIGHT_VISIT), IncludedCalls.NONE);

        assertThat(light.monthsBetweenFullCleans()).isEmpty();
        assertThat(light.meets(new CleaningInterval(6, List.of()))).isFalse();
    }

    @Test
    void tier_slotsThatDoNotDivideTheYear_refused() {
        List<Scope.Kind> five = Collections.nCopies(5, FULL_CLEAN);

        assertThatIllegalArgumentException().isThrownBy(() -> tier("five", five, IncludedCalls.NONE));
    }

    private static String days(VisitCalendar calendar) {
        return calendar.visits().stream().map(visit -> visit.date().toString().substring(5))
                .collect(Collectors.joining(" "));
    }
}

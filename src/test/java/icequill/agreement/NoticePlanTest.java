package icequill.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import icequill.DemoShop;
import icequill.agreement.NoticeRule.Anchor;
import icequill.agreement.NoticeRule.Covers;
import icequill.agreement.NoticeRule.Delivery;
import icequill.explain.Phrase;
import icequill.party.Period;
import icequill.party.Timeline;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Windows of the shipped rules. The offsets are those of N.Y. Gen. Oblig. Law 5-903, Wis. Stat. 134.49, Utah Code 15-10-201,
 * Ga. Code 13-12-3, 815 ILCS 601/10 and N.C. Gen. Stat. 75-41; the days were counted on a calendar.
 */
class NoticePlanTest {

    private static final LocalDate LONG_BEFORE = LocalDate.of(2026, 1, 2);

    private static NoticeRules shipped = new NoticeRules(new Timeline<>(List.of()));

    @BeforeAll
    static void read(@TempDir Path shop) {
        DemoShop.files(shop);
        shipped = DemoShop.read(shop).notices().orElseThrow();
    }

    /** A term to 31 December 2026 with 60 days to refuse: refused by 1 November at the latest, renewed on 1 January 2027. */
    @ParameterizedTest
    @CsvSource({"US-NY, 60, 2026-10-02, 2026-10-17", "US-WI, 60, 2026-09-02, 2026-10-17",
            "US-UT, 60, 2026-08-03, 2026-10-02", "US-GA, 60, 2026-09-02, 2026-10-02",
            "US-IL, 60, 2026-09-02, 2026-10-02", "US-NC, 60, 2026-11-17, 2026-12-17",
            "US-NY, 31, 2026-10-31, 2026-11-15", "US-WI, 31, 2026-10-01, 2026-11-15",
            "US-UT, 31, 2026-09-01, 2026-10-31"})
    void window_shippedRules_inclusiveDays(String place, int refuseDays, LocalDate first, LocalDate last) {
        RenewalTerms terms = twoYears(refuseDays);

        NoticeRule rule = shipped.of(place, terms.lastDayToRefuse()).getFirst();

        assertThat(rule.concerns(terms)).isTrue();
        assertThat(rule.window(terms)).isEqualTo(new NoticeWindow(first, last));
    }

    @Test
    void terms_sixtyDaysBeforeTheEnd_firstOfNovember() {
        assertThat(twoYears(60).lastDayToRefuse()).isEqualTo("2026-11-01");
        assertThat(twoYears(60).term().renewal()).isEqualTo("2027-01-01");
    }

    /** Two rules with one day in common: it is the plan, though there is no time for the mail. */
    @Test
    void of_newYorkAndUtah_exactlyOneDay() {
        NoticePlan plan = NoticePlan.of(twoYears(60), List.of("US-NY", "US-UT"), shipped, NoticePlanTest::isWorkday,
                LONG_BEFORE);

        assertThat(plan.window())
                .contains(new NoticeWindow(LocalDate.of(2026, 10, 2), LocalDate.of(2026, 10, 2)));
        assertThat(plan.send()).contains(LocalDate.of(2026, 10, 2));
        assertThat(keys(plan)).containsExactly("remark.notice-uncertain", "remark.notice-tight",
                "remark.notice-adviser");
    }

    /** New York from 2 October, North Carolina from 17 November. */
    @Test
    void of_rulesWithoutACommonDay_warned() {
        NoticePlan plan = NoticePlan.of(twoYears(60), List.of("US-NY", "US-NC"), shipped, NoticePlanTest::isWorkday,
                LONG_BEFORE);

        assertThat(plan.window()).isEmpty();
        assertThat(plan.send()).isEmpty();
        assertThat(plan.rules()).extracting(NoticeRule::id).containsExactly("ny-5-903", "nc-75-41");
        assertThat(keys(plan)).contains("remark.notice-no-common-day");
    }

    /**
     * Friday 2 October and three days is Monday the 5th; Wednesday 2 September, Saturday the 5th, and Monday the 7th is a holiday;
     * 31 October, 3 November.
     */
    @ParameterizedTest
    @CsvSource({"US-NY, 60, 2026-10-05", "US-WI, 60, 2026-09-08", "US-NY, 31, 2026-11-03"})
    void of_send_aWorkingDayInsideTheWindow(String place, int refuseDays, LocalDate send) {
        NoticePlan plan = NoticePlan.of(twoYears(refuseDays), List.of(place), shipped, NoticePlanTest::isWorkday,
                LONG_BEFORE);

        assertThat(plan.send()).contains(send);
        assertThat(keys(plan)).containsExactly("remark.notice-adviser");
    }

    @ParameterizedTest
    @CsvSource({"US-VT, remark.notice-unknown", "DE, remark.notice-unknown", "US-GA, remark.notice-consumers",
            "US-FL, remark.notice-consumers", "US-IL, remark.notice-consumers"})
    void of_placeWithoutARuleForBusinesses_said(String place, String remark) {
        NoticePlan plan = NoticePlan.of(twoYears(60), List.of(place), shipped, NoticePlanTest::isWorkday, LONG_BEFORE);

        assertThat(plan.rules()).isEmpty();
        assertThat(plan.window()).isEmpty();
        assertThat(plan.send()).isEmpty();
        assertThat(keys(plan)).containsExactly(remark, "remark.notice-adviser");
    }

    /** The one day in common is a Saturday, 31 October, for a last day to refuse on 30 November. */
    @Test
    void of_noWorkingDayInTheWindow_noneProposed() {
        NoticePlan plan = NoticePlan.of(twoYears(31), List.of("US-NY", "US-UT"), shipped, NoticePlanTest::isWorkday,
                LONG_BEFORE);

        assertThat(plan.window()).map(NoticeWindow::first).contains(LocalDate.of(2026, 10, 31));
        assertThat(plan.send()).isEmpty();
        assertThat(keys(plan)).contains("remark.notice-no-working-day");
    }

    /** North Carolina counts from the renewal: 17 November to 17 December, after 1 November, the last day to refuse. */
    @Test
    void of_windowAfterTheLastDayToRefuse_warned() {
        NoticePlan plan = NoticePlan.of(twoYears(60), List.of("US-NC"), shipped, NoticePlanTest::isWorkday,
                LONG_BEFORE);

        assertThat(plan.window()).isEmpty();
        assertThat(keys(plan)).contains("remark.notice-after-refusal", "remark.notice-no-common-day");
        assertThat(
                NoticePlan.of(twoYears(30), List.of("US-NC"), shipped, NoticePlanTest::isWorkday, LONG_BEFORE).window())
                .contains(new NoticeWindow(LocalDate.of(2026, 11, 17), LocalDate.of(2026, 12, 1)));
    }

    /** New York, sixty days: 2 to 17 October, last day to refuse 1 November, last day 31 December. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2026-10-01 | outside the days for the notice",
            "2026-10-18 | outside the days for the notice", "2026-11-02 | after 2026-11-01, the last day to refuse",
            "2027-01-02 | but the agreement ends on 2026-12-31", "2024-12-31 | before the agreement begins"})
    void problem_dayOutOfTime_saysWhy(LocalDate day, String message) {
        NoticePlan plan = NoticePlan.of(twoYears(60), List.of("US-NY"), shipped, NoticePlanTest::isWorkday,
                LONG_BEFORE);

        assertThat(plan.problem(day, Place.NOWHERE)).map(Problem::text).hasValueSatisfying(
                text -> assertThat(text).contains(message, "from 2026-10-02 to 2026-10-17", "--late"));
        assertThat(plan.problem(LocalDate.of(2026, 10, 2), Place.NOWHERE)).isEmpty();
        assertThat(plan.problem(LocalDate.of(2026, 10, 17), Place.NOWHERE)).isEmpty();
    }

    /** Where no day suits both laws, one that suits neither is a problem; without any law, any day until the last to refuse will do. */
    @Test
    void problem_withoutAWindow_asFarAsCanBeSaid() {
        NoticePlan both = NoticePlan.of(twoYears(60), List.of("US-NY", "US-NC"), shipped, NoticePlanTest::isWorkday,
                LONG_BEFORE);
        NoticePlan none = NoticePlan.of(twoYears(60), List.of("US-VT"), shipped, NoticePlanTest::isWorkday,
                LONG_BEFORE);

        assertThat(both.problem(LocalDate.of(2026, 10, 10), Place.NOWHERE)).isEmpty();
        assertThat(both.problem(LocalDate.of(2026, 9, 10), Place.NOWHERE)).isPresent();
        assertThat(none.problem(LocalDate.of(2026, 9, 10), Place.NOWHERE)).isEmpty();
        assertThat(none.problem(LocalDate.of(2026, 11, 2), Place.NOWHERE)).isPresent();
    }

    /** Monday to Friday, but for Labor Day. */
    private static boolean isWorkday(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY
                && !day.equals(LocalDate.of(2026, 9, 7));
    }

    @Test
    void of_dayBeforeTheFile_unknown() {
        RenewalTerms old = new RenewalTerms(new Term(LocalDate.of(2020, 1, 1), 24), 60, 24, GoingOn.BY_TERM);

        assertThat(keys(NoticePlan.of(old, List.of("US-NY"), shipped, NoticePlanTest::isWorkday, LONG_BEFORE)))
                .contains("remark.notice-unknown");
    }

    /** Whether a law holds by how long the terms are: initial months, renewal months. */
    @ParameterizedTest
    @CsvSource({"US-NY, 12, 1, false", "US-NY, 12, 2, true", "US-WI, 12, 24, false", "US-WI, 24, 12, false",
            "US-WI, 13, 13, true", "US-UT, 3, 3, false", "US-UT, 3, 4, true", "US-GA, 11, 2, false",
            "US-GA, 12, 2, true", "US-IL, 12, 1, false", "US-NC, 12, 1, false", "US-NC, 12, 2, false",
            "US-NC, 12, 3, true"})
    void concerns_lengthOfTerms_asTheRowsSay(String place, int initial, int renewal, boolean concerned) {
        // a term that ends on 31 December 2026; January and February 2027 have 59 days
        Term term = new Term(LocalDate.of(2027, 1, 1).minusMonths(initial), initial);
        RenewalTerms terms = new RenewalTerms(term, 30, renewal, GoingOn.BY_TERM);

        assertThat(shipped.of(place, terms.lastDayToRefuse()).getFirst().concerns(terms)).isEqualTo(concerned);
        assertThat(keys(NoticePlan.of(terms, List.of(place), shipped, NoticePlanTest::isWorkday, LONG_BEFORE))
                .contains("remark.notice-not-concerned"))
                .isEqualTo(!concerned);
    }

    @Test
    void concerns_beforeTheLawAndAfterIt_not() {
        Period period = new Period(LocalDate.of(2026, 11, 2), Optional.of(LocalDate.of(2026, 12, 1)));

        assertThat(rule(period).concerns(twoYears(60))).isFalse();
        assertThat(rule(period).concerns(twoYears(59))).isTrue();
        assertThat(rule(period).concerns(twoYears(30))).isFalse();
    }

    @Test
    void words_deliveryAndContents_haveKeys() {
        assertThat(Delivery.CERTIFIED_MAIL.word()).hasToString("Word[key=delivery.certified-mail]");
        assertThat(NoticeRule.Content.LAST_DAY_TO_REFUSE.word()).hasToString("Word[key=content.last-day-to-refuse]");
    }

    @Test
    void window_endingBeforeItBegins_refused() {
        LocalDate day = LocalDate.of(2026, 1, 2);

        assertThatIllegalArgumentException().isThrownBy(() -> new NoticeWindow(day, day.minusDays(1)));
    }

    @Property(tries = 500, seed = "5903")
    void and_anyTwoWindows_theDaysOfBoth(@ForAll @IntRange(min = 0, max = 60) int first,
            @ForAll @IntRange(min = 0, max = 30) int length, @ForAll @IntRange(min = 0, max = 60) int otherFirst,
            @ForAll @IntRange(min = 0, max = 30) int otherLength) {
        LocalDate start = LocalDate.of(2026, 1, 1);
        NoticeWindow one = new NoticeWindow(start.plusDays(first), start.plusDays((long) first + length));
        NoticeWindow other = new NoticeWindow(start.plusDays(otherFirst),
                start.plusDays((long) otherFirst + otherLength));

        List<LocalDate> both = start.datesUntil(start.plusDays(100))
                .filter(day -> !day.isBefore(one.first()) && !day.isAfter(one.last()) && !day.isBefore(other.first())
                        && !day.isAfter(other.last()))
                .toList();

        assertThat(one.and(other).map(NoticeWindow::days).orElse(0L)).isEqualTo(both.size());
        assertThat(one.and(other).map(NoticeWindow::first)).isEqualTo(both.stream().findFirst());
        assertThat(other.and(one)).isEqualTo(one.and(other));
    }

    /** May to September; the next season begins on 1 May 2027, and 60 days before that is 1 March: 30 April less 60 days. */
    @Test
    void terms_nextSeason_countedFromItsFirstDay() {
        RenewalTerms terms = new RenewalTerms(new Term(LocalDate.of(2026, 5, 1), 5), 60, 5, GoingOn.NEXT_SEASON);

        assertThat(terms.term().lastDay()).isEqualTo("2026-09-30");
        assertThat(terms.begins()).isEqualTo("2027-05-01");
        assertThat(terms.lastDayToRefuse()).isEqualTo("2027-03-01");
        assertThat(terms.next().lastDay()).isEqualTo("2027-09-30");
        // New York: 30 to 15 days before the last day to refuse
        NoticePlan plan = NoticePlan.of(terms, List.of("US-NY"), shipped, NoticePlanTest::isWorkday, LONG_BEFORE);
        assertThat(plan.window()).contains(new NoticeWindow(LocalDate.of(2027, 1, 30), LocalDate.of(2027, 2, 14)));
        assertThat(plan.problem(LocalDate.of(2027, 2, 1), Place.NOWHERE)).isEmpty();
        assertThat(plan.problem(LocalDate.of(2026, 10, 15), Place.NOWHERE)).isPresent();
    }

    /** A season of more than a year is none; a 29 February comes back as the 28th. */
    @Test
    void terms_nextSeason_firstSameDayAfterTheTerm() {
        assertThat(new RenewalTerms(new Term(LocalDate.of(2026, 5, 1), 24), 60, 5, GoingOn.NEXT_SEASON).begins())
                .isEqualTo("2028-05-01");
        assertThat(new RenewalTerms(new Term(LocalDate.of(2028, 2, 29), 3), 60, 3, GoingOn.NEXT_SEASON).begins())
                .isEqualTo("2029-02-28");
    }

    private static NoticeRule rule(Period period) {
        return new NoticeRule("own", "US-XX", Wording.same("own"), Covers.BUSINESS, period, Anchor.LAST_DAY_TO_REFUSE,
                30, 15, List.of(new MinimumLength(MinimumLength.Of.INITIAL, 1, ChronoUnit.MONTHS, true)),
                List.of(Delivery.MAIL), List.of(), Wording.same("none"), "");
    }

    private static RenewalTerms twoYears(int refuseDays) {
        return new RenewalTerms(new Term(LocalDate.of(2025, 1, 1), 24), refuseDays, 24, GoingOn.BY_TERM);
    }

    /** New York's days are Friday 2 October to Saturday 17 October 2026; the 5th is the first working day three days inside. */
    @ParameterizedTest
    @CsvSource({"2026-10-01, 2026-10-05, ''", "2026-10-05, 2026-10-05, ''", "2026-10-06, 2026-10-06, ''",
            "2026-10-10, 2026-10-12, ''", "2026-10-15, 2026-10-15, remark.notice-days-left",
            "2026-10-17, , remark.notice-no-working-day", "2026-10-18, , ''", "2027-03-01, , ''"})
    void send_daysGoneBy_areNotProposed(LocalDate day, @Nullable LocalDate send, String remark) {
        NoticePlan plan = NoticePlan.of(twoYears(60), List.of("US-NY"), shipped, NoticePlanTest::isWorkday, day);

        assertThat(plan.window()).contains(new NoticeWindow(LocalDate.of(2026, 10, 2), LocalDate.of(2026, 10, 17)));
        assertThat(plan.send()).isEqualTo(Optional.ofNullable(send));
        assertThat(keys(plan)).filteredOn(key -> key.matches("remark.notice-(days-left|tight|no-working-day)"))
                .isEqualTo(remark.isEmpty() ? List.of() : List.of(remark));
    }

    private static List<String> keys(NoticePlan plan) {
        return plan.remarks().stream().map(Phrase::key).toList();
    }
}

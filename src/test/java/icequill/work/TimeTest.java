package icequill.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import icequill.RatesFixture;
import icequill.party.Wording;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.work.Holiday.NthWeekday;
import icequill.work.Holiday.Observed;
import icequill.work.Holiday.Once;
import icequill.work.Holiday.Yearly;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Month;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeTest {

    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    /** Clocks in New York change on 8 March and 1 November 2026 (IANA time zone database). */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"2026-05-13T10:00, , 2026-05-13T10:00-04:00", "2026-11-01T01:30, -04:00, 2026-11-01T01:30-04:00",
            "2026-11-01T01:30, -05:00, 2026-11-01T01:30-05:00", "2026-05-13T10:00, -04:00, 2026-05-13T10:00-04:00"})
    void resolve_timeThatExists_isTheMoment(String local, String offset, String moment) {
        assertThat(resolve(local, offset).orElseThrow().toOffsetDateTime()).hasToString(moment);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"2026-03-08T02:30, , NO_SUCH_TIME, from 03:00 on",
            "2026-11-01T01:30, , AMBIGUOUS_TIME, 2026-11-01T01:30-04:00",
            "2026-05-13T10:00, -05:00, NO_SUCH_TIME, offset -04:00",
            "2026-11-01T01:30, +02:00, NO_SUCH_TIME, offset -04:00 or -05:00"})
    void resolve_timeThatDoesNot_isAProblemThatSaysWhatWould(String local, String offset, Code code, String allowed) {
        List<Problem> problems = resolve(local, offset).problems();

        assertThat(problems).extracting(Problem::code).containsExactly(code);
        assertThat(problems.getFirst().allowed()).contains(allowed);
    }

    private static Validated<ZonedDateTime> resolve(String local, String offset) {
        return LocalTimes.resolve(LocalDateTime.parse(local), Optional.ofNullable(offset).map(ZoneOffset::of), NEW_YORK,
                Place.NOWHERE);
    }

    /** Dates of US federal holidays in 2026 to 2028 as the calendar has them (5 U.S.C. 6103 for the rules). */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"2026-11-26, true", "2026-11-19, false", "2027-11-25, true", "2026-05-25, true", "2026-05-18, false",
            "2027-05-31, true", "2026-12-25, true", "2026-12-24, false", "2026-07-04, true", "2026-07-03, true",
            "2027-07-05, true", "2027-07-06, false", "2026-08-14, true", "2027-08-14, false", "2028-07-03, false"})
    void fallsOn_rules_findTheDay(LocalDate day, boolean expected) {
        List<Holiday.Rule> rules = List.of(new NthWeekday(4, DayOfWeek.THURSDAY, Month.NOVEMBER),
                new NthWeekday(-1, DayOfWeek.MONDAY, Month.MAY), new Yearly(MonthDay.of(12, 25), Observed.NEVER),
                new Yearly(MonthDay.of(7, 4), Observed.TOO), new Once(LocalDate.of(2026, 8, 14)));

        assertThat(rules.stream().anyMatch(rule -> rule.fallsOn(day))).isEqualTo(expected);
    }

    /** 4 July 2026 is a Saturday, 2027 a Sunday, 2028 a Tuesday; 1 January 2028 a Saturday, so 2027 ends with a holiday. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"07-04, 2026-07-03, NEVER, false", "07-04, 2026-07-03, TOO, true", "07-04, 2026-07-03, INSTEAD, true",
            "07-04, 2026-07-04, NEVER, true", "07-04, 2026-07-04, TOO, true", "07-04, 2026-07-04, INSTEAD, false",
            "07-04, 2027-07-04, INSTEAD, false", "07-04, 2027-07-05, INSTEAD, true", "07-04, 2027-07-05, NEVER, false",
            "07-04, 2028-07-04, INSTEAD, true", "07-04, 2028-07-03, INSTEAD, false",
            "01-01, 2027-12-31, INSTEAD, true", "01-01, 2028-01-01, INSTEAD, false"})
    void fallsOn_weekend_insteadOrToo(String date, LocalDate day, Observed observed, boolean expected) {
        assertThat(new Yearly(MonthDay.parse("--" + date), observed).fallsOn(day)).isEqualTo(expected);
    }

    @Test
    void nthWeekday_fifth_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new NthWeekday(5, DayOfWeek.MONDAY, Month.MAY));
        assertThatIllegalArgumentException().isThrownBy(() -> new NthWeekday(0, DayOfWeek.MONDAY, Month.MAY));
    }

    @Test
    void split_aWeek_everyMinuteHasTheBandOfItsLocalTime() {
        ZonedDateTime from = ZonedDateTime.of(2026, 10, 30, 5, 17, 0, 0, NEW_YORK);
        ZonedDateTime until = from.plusDays(4);

        List<BandWeek.Slice> slices = RatesFixture.WEEK.split(from, until);

        // minute by minute, which shares nothing with the search for boundaries
        ZonedDateTime minute = from;
        for (BandWeek.Slice slice : slices) {
            assertThat(slice.from()).isEqualTo(minute.toInstant());
            for (; minute.toInstant().isBefore(slice.until()); minute = minute.plusMinutes(1)) {
                assertThat(slice.band()).as(minute.toString()).isEqualTo(expected(minute.toLocalDateTime()));
            }
        }
        assertThat(minute).isEqualTo(until);
    }

    private static Band expected(LocalDateTime local) {
        if (local.getDayOfWeek() == DayOfWeek.SUNDAY) {
            return RatesFixture.SUNDAYS;
        }
        boolean day = local.getDayOfWeek() != DayOfWeek.SATURDAY && local.getHour() >= 7 && local.getHour() < 17;
        return day ? RatesFixture.STANDARD : RatesFixture.AFTER_HOURS;
    }

    @Test
    void split_nothingBetween_noSlices() {
        ZonedDateTime moment = ZonedDateTime.of(2026, 5, 13, 10, 0, 0, 0, NEW_YORK);

        assertThat(RatesFixture.WEEK.split(moment, moment)).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> RatesFixture.WEEK.split(moment, moment.minusMinutes(1)));
    }

    @Test
    void window_endsBeforeItBegins_refused() {
        Band band = new Band("b", Wording.same("b"));

        assertThatIllegalArgumentException().isThrownBy(() -> new BandWeek.Window(Set.of(DayOfWeek.MONDAY),
                LocalTime.of(9, 0), LocalTime.of(8, 0), band));
    }

    @Test
    void attendance_gapOrNoSpell_refused() {
        ZonedDateTime ten = ZonedDateTime.of(2026, 5, 13, 10, 0, 0, 0, NEW_YORK);
        Attendance.Spell first = new Attendance.Spell(ten, ten.plusHours(1), ChargeClass.REPAIR, Outcome.CHARGED);
        Attendance.Spell later = new Attendance.Spell(ten.plusHours(2), ten.plusHours(3), ChargeClass.REPAIR,
                Outcome.CHARGED);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Attendance("Ada", "lead", List.of(first, later), Place.NOWHERE));
        assertThatIllegalArgumentException().isThrownBy(() -> new Attendance("Ada", "lead", List.of(), Place.NOWHERE));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Attendance.Spell(ten, ten.plusHours(1), ChargeClass.PARTS, Outcome.CHARGED));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Attendance.Spell(ten, ten, ChargeClass.REPAIR, Outcome.CHARGED));
    }
}

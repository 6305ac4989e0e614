package icequill.work;

import icequill.party.Wording;
import icequill.problem.Check;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.temporal.TemporalAdjusters;

/** A day on which holiday prices hold. */
public record Holiday(Wording name, Rule rule) {

    /** On which day of each year it falls. */
    public sealed interface Rule {
        boolean fallsOn(LocalDate day);
    }

    /** Whether a working day counts beside or in place of a date that falls on a weekend. */
    public enum Observed {
        NEVER, TOO, INSTEAD
    }

    /**
     * The same date every year.
     *
     * @param observed by the Friday before when it falls on a Saturday, by the Monday after when on a Sunday
     */
    public record Yearly(MonthDay date, Observed observed) implements Rule {
        @Override
        public boolean fallsOn(LocalDate day) {
            if (isDate(day)) {
                boolean isMoved = day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
                return observed != Observed.INSTEAD || !isMoved;
            }
            return observed != Observed.NEVER && switch (day.getDayOfWeek()) {
            case FRIDAY -> isDate(day.plusDays(1));
            case MONDAY -> isDate(day.minusDays(1));
            default -> false;
            };
        }

        private boolean isDate(LocalDate day) {
            return MonthDay.from(day).equals(date);
        }
    }

    /**
     * A weekday counted within its month.
     *
     * @param nth 1 to 4 from the month's start, or -1 for the last
     */
    public record NthWeekday(int nth, DayOfWeek weekday, Month month) implements Rule {
        public NthWeekday {
            Check.that(nth == -1 || (nth >= 1 && nth <= 4), "nth is " + nth + ", must be 1 to 4 or -1");
        }

        @Override
        public boolean fallsOn(LocalDate day) {
            return day.getMonth() == month && day.equals(day.with(TemporalAdjusters.dayOfWeekInMonth(nth, weekday)));
        }
    }

    /** One single day. */
    public record Once(LocalDate date) implements Rule {
        @Override
        public boolean fallsOn(LocalDate day) {
            return day.equals(date);
        }
    }
}

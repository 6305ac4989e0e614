package icequill.forecast.fit;

import icequill.forecast.stops.Pace;
import icequill.party.SiteKind;
import icequill.problem.Place;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;

/**
 * A run by the calendar.
 *
 * @param since when its dirt began to gather
 * @param watched from when on its stops are on record
 * @param until when it ended
 * @param faster how many times as fast dirt works at its site, above 0
 * @param place where it was recorded
 */
public record DatedRun(SiteKind kind, Days since, LocalDate watched, Days until, boolean stopped, double faster,
        Place place) {

    /** A day that is known, or the month in which it lay. */
    public record Days(LocalDate first, LocalDate last) {

        LocalDate middle() {
            return first.plusDays(ChronoUnit.DAYS.between(first, last) / 2);
        }
    }

    /** As ages of dirt where the months of a year count so. */
    public Run at(Pace pace) {
        double entered = months(pace, since.first(), watched);
        double atLeast = Math.max(entered, months(pace, since.last(), until.first()));
        return new Run(kind, entered, atLeast, stopped ? months(pace, since.first(), until.last()) : atLeast, stopped,
                place);
    }

    /** Months of dirt on a day; 0 before it began to gather. */
    double age(Pace pace, LocalDate day) {
        return months(pace, since.middle(), day);
    }

    /** The quarter of its end, from 0. */
    int quarter() {
        return quarter(until.first());
    }

    static int quarter(LocalDate day) {
        return day.get(IsoFields.QUARTER_OF_YEAR) - 1;
    }

    private double months(Pace pace, LocalDate from, LocalDate day) {
        return day.isAfter(from) ? faster * pace.between(from, day) : 0;
    }
}

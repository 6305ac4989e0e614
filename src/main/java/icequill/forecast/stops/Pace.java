package icequill.forecast.stops;

import icequill.problem.Check;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How much each month of the calendar counts for a machine: 0 while it stands idle, more than 1 while stops come more often than on
 * average.
 *
 * @param months from January on, each from 0, one at least above 0
 */
public record Pace(List<Double> months) {

    /** In a year. */
    public static final int QUARTERS = 4;
    private static final int YEAR = 12;
    private static final double DAYS_OF_A_MONTH = 365.25 / YEAR;

    /** All months count alike. */
    public static final Pace EVEN = new Pace(Collections.nCopies(YEAR, 1.0));

    public Pace {
        months = List.copyOf(months);
        Check.that(months.size() == YEAR && months.stream().allMatch(month -> month >= 0 && Double.isFinite(month))
                && months.stream().anyMatch(month -> month > 0), "months that count " + months);
    }

    /** Of the quarters of a year, January to March first. */
    public static Pace ofQuarters(List<Double> quarters) {
        return new Pace(IntStream.range(0, YEAR).mapToObj(month -> quarters.get(month * QUARTERS / YEAR)).toList());
    }

    /** Where both hold. */
    public Pace times(Pace other) {
        return new Pace(IntStream.range(0, YEAR).mapToObj(i -> months.get(i) * other.months.get(i)).toList());
    }

    /** What a year counts, in months. */
    public double aYear() {
        return months.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** What the time between two days counts, in months; broken ones by their days. */
    public double between(LocalDate from, LocalDate until) {
        Check.that(!until.isBefore(from), "from " + from + " until " + until);
        if (equals(EVEN)) {
            return ChronoUnit.DAYS.between(from, until) / DAYS_OF_A_MONTH;
        }
        double sum = 0;
        for (YearMonth month = YearMonth.from(from); !month.isAfter(YearMonth.from(until)); month = month
                .plusMonths(1)) {
            LocalDate first = from.isAfter(month.atDay(1)) ? from : month.atDay(1);
            LocalDate last = until.isBefore(month.plusMonths(1).atDay(1)) ? until : month.plusMonths(1).atDay(1);
            sum += in(month) * ChronoUnit.DAYS.between(first, last) / month.lengthOfMonth();
        }
        return sum;
    }

    /** As a forecast takes it that begins on a day. */
    public Season from(LocalDate start) {
        if (equals(EVEN)) {
            return Season.ALL_YEAR;
        }
        List<Season.Stretch> stretches = new ArrayList<>();
        for (int i = 0; i <= YEAR; i++) {
            YearMonth month = YearMonth.from(start).plusMonths(i);
            double from = Math.max(0, position(start, month.atDay(1)));
            double until = Math.min(YEAR, position(start, month.plusMonths(1).atDay(1)));
            if (in(month) > 0 && until > from) {
                boolean follows = !stretches.isEmpty() && stretches.getLast().until() == from
                        && stretches.getLast().counts() == in(month);
                double begun = follows ? stretches.removeLast().from() : from;
                stretches.add(new Season.Stretch(begun, until, in(month)));
            }
        }
        return new Season(stretches);
    }

    private double in(YearMonth month) {
        return months.get(month.getMonthValue() - 1);
    }

    /** Months from one day to another, broken ones by the days of their month, all of which count alike. */
    public static double position(LocalDate start, LocalDate day) {
        return ChronoUnit.MONTHS.between(YearMonth.from(start), YearMonth.from(day)) + part(day) - part(start);
    }

    private static double part(LocalDate day) {
        return (day.getDayOfMonth() - 1.0) / day.lengthOfMonth();
    }
}

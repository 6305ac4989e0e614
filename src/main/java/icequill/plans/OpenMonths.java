package icequill.plans;

import icequill.forecast.Season;
import icequill.problem.Check;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * The months of a year in which the machines of a site run. Out of season they stand idle: they neither fail nor get dirty.
 *
 * @param open empty for the whole year
 */
public record OpenMonths(Set<Month> open) {

    private static final int YEAR = 12;
    private static final double DAYS_OF_A_MONTH = 365.25 / YEAR;

    /** Months of a year that machines run. */
    public int aYear() {
        return open.isEmpty() ? YEAR : open.size();
    }

    public boolean isWholeYear() {
        return aYear() == YEAR;
    }

    /** Days of a year that machines run; February has 28. */
    public int days() {
        return Arrays.stream(Month.values()).filter(this::runsIn).mapToInt(month -> month.length(false)).sum();
    }

    /** Months that machines run between two days; broken ones by the days of the month. */
    public double between(LocalDate from, LocalDate until) {
        Check.that(!until.isBefore(from), "from " + from + " until " + until);
        if (isWholeYear()) {
            return ChronoUnit.DAYS.between(from, until) / DAYS_OF_A_MONTH;
        }
        double months = 0;
        for (YearMonth month = YearMonth.from(from); !month.isAfter(YearMonth.from(until)); month = month
                .plusMonths(1)) {
            if (runsIn(month.getMonth())) {
                LocalDate first = from.isAfter(month.atDay(1)) ? from : month.atDay(1);
                LocalDate last = until.isBefore(month.plusMonths(1).atDay(1)) ? until : month.plusMonths(1).atDay(1);
                months += (double) ChronoUnit.DAYS.between(first, last) / month.lengthOfMonth();
            }
        }
        return months;
    }

    /** As a forecast takes it that begins on a day. */
    public Season from(LocalDate start) {
        if (isWholeYear()) {
            return Season.ALL_YEAR;
        }
        List<Season.Stretch> stretches = new ArrayList<>();
        for (int i = 0; i <= YEAR; i++) {
            YearMonth month = YearMonth.from(start).plusMonths(i);
            double from = Math.max(0, position(start, month.atDay(1)));
            double until = Math.min(YEAR, position(start, month.plusMonths(1).atDay(1)));
            if (runsIn(month.getMonth()) && until > from) {
                boolean follows = !stretches.isEmpty() && stretches.getLast().until() == from;
                double begun = follows ? stretches.removeLast().from() : from;
                stretches.add(new Season.Stretch(begun, until));
            }
        }
        return new Season(stretches);
    }

    /** Months from one day to another, broken ones by the days of their month. */
    public static double position(LocalDate start, LocalDate day) {
        return ChronoUnit.MONTHS.between(YearMonth.from(start), YearMonth.from(day)) + part(day) - part(start);
    }

    private static double part(LocalDate day) {
        return (day.getDayOfMonth() - 1.0) / day.lengthOfMonth();
    }

    /** The day itself, or the first day after it on which machines run. */
    LocalDate opening(LocalDate day) {
        LocalDate open = day;
        while (!runsIn(open.getMonth())) {
            open = open.withDayOfMonth(1).plusMonths(1);
        }
        return open;
    }

    private boolean runsIn(Month month) {
        return open.isEmpty() || open.contains(month);
    }
}

package icequill.forecast;

import icequill.explain.Figure;
import icequill.money.Rounding;
import icequill.problem.Check;
import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How much warmer a dirty condenser gives off its heat. Derived from one published row on air conditioners (from 95 F to 105 F: 7 %
 * less capacity, 10 % more power; FEMP fact sheet of May 2005, read where it is quoted); nothing measured on ice machines was
 * found, and other measurements lie between no effect and half.
 *
 * @param fahrenheit degrees, from 0 to {@value #MOST}
 */
public record CondensingRise(BigDecimal fahrenheit) {

    /** Beyond it a straight line says nothing. */
    public static final int MOST = 30;

    private static final BigDecimal POWER = new BigDecimal("0.010");
    private static final BigDecimal CAPACITY = new BigDecimal("0.007");
    /** Degrees that a year's dirt may bring: the low, the middle and the high of a range that nobody has measured. */
    private static final List<Integer> A_YEAR = List.of(0, 10, 20);
    private static final double YEAR = 12;

    public CondensingRise {
        Check.inRange(fahrenheit, BigDecimal.ZERO, BigDecimal.valueOf(MOST), "condensing rise");
    }

    /**
     * The low, the middle and the high rise on average over some months. The dirt of a year is supposed to gather evenly and then
     * to stay as it is; degrees are rounded to tenths.
     *
     * @param from months since the condenser was brushed, at the beginning
     * @param months how long
     */
    public static List<CondensingRise> range(double from, double months) {
        return range(Care.NEVER, from, months);
    }

    /** The same under a calendar of brushings. */
    public static List<CondensingRise> range(Care care, double from, double months) {
        Check.that(from >= 0 && months > 0, "from month " + from + " for " + months);
        Stretches stretches = Stretches.of(care, Season.ALL_YEAR, months);
        double sum = 0;
        double age = from;
        for (double length : stretches.lengths()) {
            sum += gathered(age + length) - gathered(age);
            age = stretches.leaves() * (age + length);
        }
        double part = sum / months;
        return A_YEAR.stream().map(degrees -> new CondensingRise(
                Rounding.halfUp(BigFraction.from(degrees * part), 1))).toList();
    }

    /** What has gathered by a month, summed over the months. */
    private static double gathered(double month) {
        return month <= YEAR ? month * month / (2 * YEAR) : month - YEAR / 2;
    }

    /** What is left of the ice a day, of 1. */
    public Figure capacity() {
        return Figure.term(1, "").minus(lost());
    }

    /** Energy for a pound of ice beside that of a clean machine. */
    public Figure energy() {
        return Figure.term(1, "").plus(Figure.term(POWER, "").times(degrees())).over(capacity());
    }

    /** The part of the ice a day that is lost. */
    Figure lost() {
        return Figure.term(CAPACITY, "").times(degrees());
    }

    private Figure degrees() {
        return Figure.term(fahrenheit, "F");
    }
}

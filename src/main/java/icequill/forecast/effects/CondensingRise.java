package icequill.forecast.effects;

import icequill.explain.Figure;
import icequill.forecast.MeanDirt;
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

    public CondensingRise {
        Check.inRange(fahrenheit, BigDecimal.ZERO, BigDecimal.valueOf(MOST), "condensing rise");
    }

    /**
     * The low, the middle and the high rise on average, in degrees rounded to thousandths.
     *
     * @param dirt of a condenser on average, as {@link MeanDirt} says; 1 for that of a year
     */
    public static List<CondensingRise> range(double dirt) {
        Check.that(dirt >= 0 && dirt <= 1, "dirt of " + dirt);
        return A_YEAR.stream().map(degrees -> new CondensingRise(
                Rounding.halfUp(BigFraction.from(degrees * dirt), 3))).toList();
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

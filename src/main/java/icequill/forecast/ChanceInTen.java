package icequill.forecast;

import icequill.problem.Check;

/**
 * A chance as so many years in ten. Nothing is ever said to be sure: the fewest is "less than 1 in 10", the most "more than 9".
 *
 * @param tenths from 1 to 9
 */
public record ChanceInTen(Than than, int tenths) {

    private static final double HALF_A_TENTH = 0.05;
    private static final int TENTHS = 10;
    private static final int MOST = 9;

    /** How the tenths are to be read. */
    public enum Than {
        LESS, ABOUT, MORE
    }

    /** Rounded to the nearest tenth, halves up. */
    public static ChanceInTen of(double chance) {
        Check.that(chance >= 0 && chance <= 1, "a chance of " + chance);
        return chance < HALF_A_TENTH
                ? new ChanceInTen(Than.LESS, 1)
                : chance >= 1 - HALF_A_TENTH
                        ? new ChanceInTen(Than.MORE, MOST)
                        : new ChanceInTen(Than.ABOUT, (int) Math.round(chance * TENTHS));
    }
}

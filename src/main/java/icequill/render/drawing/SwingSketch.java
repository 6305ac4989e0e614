package icequill.render.drawing;

import icequill.money.Amounts;
import java.util.List;
import java.util.Map;
import javax.money.MonetaryAmount;

/** Bars on one scale: from one answer to another, with a line where the answer stands and a broken one at zero. */
public final class SwingSketch {

    private static final int WIDE = 800;
    private static final int HIGH = 44;
    private static final int THIN = 3;
    private static final int DASH = 8;

    private final double low;
    private final double high;
    private final int base;

    private SwingSketch(double low, double high, double base) {
        this.low = low;
        this.high = high;
        this.base = at(base);
    }

    /** A scale that holds all amounts, and zero. */
    public static SwingSketch over(List<MonetaryAmount> amounts, MonetaryAmount base) {
        double least = amounts.stream().mapToDouble(SwingSketch::number).min().orElse(0);
        double most = amounts.stream().mapToDouble(SwingSketch::number).max().orElse(0);
        return new SwingSketch(Math.min(0, least), Math.max(0, most), number(base));
    }

    /**
     * The plot as a drawing.
     *
     * @param text for those who do not see it
     */
    public Map<String, Object> bar(MonetaryAmount one, MonetaryAmount other, String text) {
        int from = at(number(one));
        int until = at(number(other));
        int left = Math.min(from, until);
        StringBuilder zero = new StringBuilder();
        for (int y = 0; y < HIGH; y += 2 * DASH) {
            zero.append("M").append(at(0)).append(" ").append(y).append("V").append(Math.min(HIGH, y + DASH));
        }
        return Sketch.of(WIDE, HIGH)
                .outlined(Sketch.box(left, DASH, Math.max(THIN, Math.abs(until - from)), HIGH - 2 * DASH), Sketch.GRAY,
                        THIN)
                .areas(end(from), Sketch.INK)
                .lines(zero.toString(), THIN)
                .lines("M" + base + " 0V" + HIGH, 2 * THIN).model(text);
    }

    /** The end of the careful figure is dark. */
    private static String end(int at) {
        return Sketch.box(Math.clamp(at - DASH / 2, 0, WIDE - DASH), DASH, DASH, HIGH - 2 * DASH);
    }

    private int at(double amount) {
        return high == low ? DASH : (int) Math.round(DASH + (amount - low) / (high - low) * (WIDE - 2 * DASH));
    }

    private static double number(MonetaryAmount amount) {
        return Amounts.number(amount).doubleValue();
    }
}

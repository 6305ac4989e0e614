package icequill.render.drawing;

import icequill.money.Amounts;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** Bars on one scale with numbers: from one answer to another, with a line where the answer stands and a broken one at zero. */
public final class SwingSketch {

    private static final int WIDE = 800;
    private static final int HIGH = 44;
    private static final int THIN = 3;
    private static final int DASH = 8;
    /** Numbers on the scale, at most. */
    private static final int MOST = 6;
    private static final int MOST_DIGITS_BEHIND = -3;
    private static final List<Integer> STEPS = List.of(1, 2, 5);

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
     * The scale with its numbers, for above the bars.
     *
     * @param write how a number is written
     */
    public Drawn scale(Function<BigDecimal, String> write, String text) {
        Sketch sketch = Sketch.of(WIDE, HIGH);
        StringBuilder lines = new StringBuilder();
        for (BigDecimal number : numbers()) {
            int at = at(number.doubleValue());
            lines.append("M").append(at).append(" ").append(HIGH - DASH).append("V").append(HIGH);
            sketch.word(write.apply(number), at, HIGH - DASH - THIN,
                    at < WIDE / MOST / 2 ? "start" : at > WIDE - WIDE / MOST / 2 ? "end" : "middle");
        }
        return sketch.lines(lines.toString(), THIN).drawn(text);
    }

    /** Multiples of one, two or five times a power of ten, zero among them. */
    private List<BigDecimal> numbers() {
        BigDecimal step = step();
        BigDecimal from = BigDecimal.valueOf((long) Math.ceil(low / step.doubleValue())).multiply(step);
        return Stream.iterate(from, number -> number.doubleValue() <= high, number -> number.add(step)).toList();
    }

    private BigDecimal step() {
        return IntStream.iterate(MOST_DIGITS_BEHIND, power -> power + 1).boxed()
                .flatMap(power -> STEPS.stream().map(step -> BigDecimal.valueOf(step).scaleByPowerOfTen(power)))
                .filter(step -> step.doubleValue() * (MOST - 1) >= high - low).findFirst().orElseThrow();
    }

    /**
     * The plot as a drawing.
     *
     * @param text for those who do not see it
     */
    public Drawn bar(MonetaryAmount one, MonetaryAmount other, String text) {
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
                .lines("M" + base + " 0V" + HIGH, 2 * THIN).drawn(text);
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

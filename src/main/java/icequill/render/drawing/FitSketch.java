package icequill.render.drawing;

import icequill.document.FitSheet;
import java.math.BigDecimal;
import java.util.Map;

/** Machines stopped by months since the last cleaning: what was recorded as dots, what was fitted as a line. */
public final class FitSketch {

    private static final int WIDE = 820;
    private static final int HIGH = 420;
    private static final int EDGE = 12;
    private static final int THIN = 3;
    private static final int DOT = 9;
    private static final int MACHINES = 20;
    private static final int EVERY = 5;
    private static final int HALF_YEAR = 6;

    private final double last;

    private FitSketch(double last) {
        this.last = last;
    }

    /** The month at the right end of the plot. */
    public static BigDecimal lastMonth(FitSheet.Plot plot) {
        return plot.curve().getLast().months();
    }

    /**
     * The plot as a drawing.
     *
     * @param text for those who do not see it
     */
    public static Map<String, Object> of(FitSheet.Plot plot, String text) {
        FitSketch sketch = new FitSketch(lastMonth(plot).doubleValue());
        StringBuilder grid = new StringBuilder();
        for (int machines = 0; machines <= MACHINES; machines += EVERY) {
            grid.append("M").append(EDGE).append(" ").append(y(machines)).append("H").append(WIDE - EDGE);
        }
        for (int month = 0; month <= sketch.last; month += HALF_YEAR) {
            grid.append("M").append(sketch.x(month)).append(" ").append(EDGE).append("V").append(HIGH - EDGE);
        }
        StringBuilder curve = new StringBuilder();
        for (FitSheet.Point point : plot.curve()) {
            curve.append(curve.isEmpty() ? "M" : "L").append(sketch.x(point.months().doubleValue())).append(" ")
                    .append(y(point.stopped().doubleValue()));
        }
        StringBuilder dots = new StringBuilder();
        for (FitSheet.Point point : plot.points()) {
            dots.append(Sketch.box(sketch.x(point.months().doubleValue()) - DOT,
                    y(point.stopped().doubleValue()) - DOT, 2 * DOT, 2 * DOT));
        }
        return Sketch.of(WIDE, HIGH).outlined(Sketch.box(EDGE, EDGE, WIDE - 2 * EDGE, HIGH - 2 * EDGE), Sketch.WHITE,
                THIN).grid(grid.toString(), THIN).lines(curve.toString(), 2 * THIN)
                .outlined(dots.toString(), Sketch.WHITE, 2 * THIN).model(text);
    }

    private int x(double month) {
        return (int) Math.round(EDGE + month / last * (WIDE - 2 * EDGE));
    }

    private static int y(double machines) {
        return (int) Math.round(HIGH - EDGE - machines / MACHINES * (HIGH - 2 * EDGE));
    }
}

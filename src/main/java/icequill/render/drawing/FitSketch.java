package icequill.render.drawing;

import icequill.document.FitSheet;

/** Machines stopped by months since the last cleaning: what was recorded as dots, what was fitted as a line; with numbers on both axes. */
public final class FitSketch {

    private static final int WIDE = 820;
    private static final int HIGH = 460;
    private static final int EDGE = 16;
    /** Room for the numbers of the axes. */
    private static final int LEFT = 60;
    private static final int BOTTOM = 48;
    private static final int GAP = 8;
    private static final int THIN = 3;
    private static final int DOT = 9;
    private static final int MACHINES = 20;
    private static final int EVERY = 5;
    private static final int HALF_YEAR = 6;
    private static final int MOST_NUMBERS = 12;

    private final double last;

    private FitSketch(double last) {
        this.last = last;
    }

    /**
     * The plot as a drawing.
     *
     * @param text for those who do not see it
     */
    public static Drawn of(FitSheet.Plot plot, String text) {
        FitSketch sketch = new FitSketch(plot.curve().getLast().months().doubleValue());
        Sketch plane = Sketch.of(WIDE, HIGH);
        StringBuilder grid = new StringBuilder();
        for (int machines = 0; machines <= MACHINES; machines += EVERY) {
            grid.append("M").append(LEFT).append(" ").append(y(machines)).append("H").append(WIDE - EDGE);
            plane.word(String.valueOf(machines), LEFT - GAP, y(machines) + Sketch.LETTERS / 3, "end");
        }
        for (int month = 0; month <= sketch.last; month += HALF_YEAR) {
            grid.append("M").append(sketch.x(month)).append(" ").append(EDGE).append("V").append(HIGH - BOTTOM);
            if (month % (HALF_YEAR * sketch.every()) == 0) {
                plane.word(String.valueOf(month), sketch.x(month), HIGH - GAP, "middle");
            }
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
        return plane.outlined(Sketch.box(LEFT, EDGE, WIDE - EDGE - LEFT, HIGH - EDGE - BOTTOM), Sketch.WHITE,
                THIN).grid(grid.toString(), THIN).lines(curve.toString(), 2 * THIN)
                .outlined(dots.toString(), Sketch.WHITE, 2 * THIN).drawn(text);
    }

    /** On a long plot only some lines have their number, so that none touch: one of so many. */
    private int every() {
        return (int) Math.ceil(last / (HALF_YEAR * MOST_NUMBERS));
    }

    private int x(double month) {
        return (int) Math.round(LEFT + month / last * (WIDE - EDGE - LEFT));
    }

    private static int y(double machines) {
        return (int) Math.round(HIGH - BOTTOM - machines / MACHINES * (HIGH - EDGE - BOTTOM));
    }
}

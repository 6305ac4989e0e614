package icequill.render.drawing;

import icequill.forecast.ChancesPerTenSites;

/**
 * Sites as little ice machines in a row: with ice in the bin where no call came, hatched where one did, and dark where more did, so
 * that they differ in print without colors too.
 */
public final class MachinesSketch {

    private static final int WIDE = 34;
    private static final int HIGH = 50;
    private static final int GAP = 12;
    private static final int LINE = 3;
    private static final int BIN = 20;

    private final StringBuilder cabinets = new StringBuilder();
    private final StringBuilder ice = new StringBuilder();
    private final StringBuilder hatching = new StringBuilder();
    private final StringBuilder dark = new StringBuilder();
    private int count;

    private MachinesSketch() {
    }

    public static Drawn of(ChancesPerTenSites sites, String text) {
        return row(sites).drawn(text, 1);
    }

    /** The same for a page on which it is what is looked at first. */
    public static Drawn large(ChancesPerTenSites sites, String text) {
        return row(sites).drawn(text, 2);
    }

    private static MachinesSketch row(ChancesPerTenSites sites) {
        MachinesSketch row = new MachinesSketch();
        for (int i = 0; i < sites.none(); i++) {
            row.quiet();
        }
        for (int i = 0; i < sites.one(); i++) {
            row.hatched();
        }
        for (int i = 0; i < sites.more(); i++) {
            row.dark();
        }
        return row;
    }

    /** One machine of each kind, to explain them. */
    public static Drawn quietOne(String text) {
        MachinesSketch row = new MachinesSketch();
        row.quiet();
        return row.drawn(text, 1);
    }

    public static Drawn hatchedOne(String text) {
        MachinesSketch row = new MachinesSketch();
        row.hatched();
        return row.drawn(text, 1);
    }

    public static Drawn darkOne(String text) {
        MachinesSketch row = new MachinesSketch();
        row.dark();
        return row.drawn(text, 1);
    }

    private Drawn drawn(String text, int times) {
        return Sketch.of(count * (WIDE + GAP) - GAP + 2 * LINE, HIGH + 2 * LINE)
                .areas(dark.toString(), Sketch.INK).lines(hatching.toString(), LINE)
                .lines(cabinets.toString(), LINE).lines(ice.toString(), 2).drawn(text, times);
    }

    private int cabinet() {
        int left = LINE + count * (WIDE + GAP);
        cabinets.append(Sketch.box(left, LINE, WIDE, HIGH)).append("M").append(left).append(" ").append(LINE + BIN)
                .append("H").append(left + WIDE);
        count++;
        return left;
    }

    /** Three cubes in the bin. */
    private void quiet() {
        int left = cabinet();
        ice.append(Sketch.box(left + 6, LINE + 39, 7, 7)).append(Sketch.box(left + 21, LINE + 39, 7, 7))
                .append(Sketch.box(left + 13, LINE + 28, 7, 7));
    }

    private void hatched() {
        hatching.append(HatchPattern.path(1, cabinet(), LINE, WIDE, HIGH));
    }

    private void dark() {
        int left = cabinet();
        dark.append(Sketch.box(left, LINE, WIDE, HIGH));
    }
}

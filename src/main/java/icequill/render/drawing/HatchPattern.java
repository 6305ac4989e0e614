package icequill.render.drawing;

import java.util.StringJoiner;

/** Lines that fill a box so that people can be told apart without color: none for the first, another direction for each next one. */
public final class HatchPattern {

    static final int PATTERNS = 6;

    private static final int GAP = 12;

    private HatchPattern() {
    }

    /**
     * The lines as data of a path; empty for the pattern without any.
     *
     * @param pattern from 0; beyond the last one they begin again
     */
    public static String path(int pattern, int x, int y, int width, int height) {
        StringJoiner lines = new StringJoiner(" ");
        switch (pattern % PATTERNS) {
        case 1 -> rising(lines, x, y, width, height);
        case 2 -> across(lines, x, y, width, height);
        case 3 -> upright(lines, x, y, width, height);
        case 4 -> falling(lines, x, y, width, height);
        case 5 -> {
            across(lines, x, y, width, height);
            upright(lines, x, y, width, height);
        }
        default -> {
        }
        }
        return lines.toString();
    }

    private static void across(StringJoiner lines, int x, int y, int width, int height) {
        for (int at = y + GAP; at < y + height; at += GAP) {
            line(lines, x, at, x + width, at);
        }
    }

    private static void upright(StringJoiner lines, int x, int y, int width, int height) {
        for (int at = x + GAP; at < x + width; at += GAP) {
            line(lines, at, y, at, y + height);
        }
    }

    private static void rising(StringJoiner lines, int x, int y, int width, int height) {
        for (int foot = x - height + GAP; foot < x + width; foot += GAP) {
            int left = Math.max(foot, x);
            int right = Math.min(foot + height, x + width);
            line(lines, left, y + height - (left - foot), right, y + height - (right - foot));
        }
    }

    private static void falling(StringJoiner lines, int x, int y, int width, int height) {
        for (int top = x - height + GAP; top < x + width; top += GAP) {
            int left = Math.max(top, x);
            int right = Math.min(top + height, x + width);
            line(lines, left, y + (left - top), right, y + (right - top));
        }
    }

    private static void line(StringJoiner lines, int fromX, int fromY, int toX, int toY) {
        lines.add("M " + fromX + " " + fromY + " L " + toX + " " + toY);
    }
}

package icequill.render.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing in the making, ready for {@code parts/drawing.ftlh}. Its units are tenths of a millimeter.
 *
 * @param width of the drawing
 * @param height of the drawing
 */
record Sketch(int width, int height, List<Drawn.Outline> parts, List<Drawn.Word> words) {

    /** The ink of our papers. */
    static final String INK = "#1a1a1a";
    static final String WHITE = "#ffffff";
    static final String GRAY = "#bbbbbb";
    private static final String NONE = "none";
    /** Nine points, in tenths of a millimeter. */
    static final int LETTERS = 32;

    static Sketch of(int width, int height) {
        return new Sketch(width, height, new ArrayList<>(), new ArrayList<>());
    }

    /** Adds lines; a path without steps adds nothing. */
    Sketch lines(String path, int thickness) {
        return add(path, NONE, INK, thickness);
    }

    /** Adds lines that only guide the eye. */
    Sketch grid(String path, int thickness) {
        return add(path, NONE, GRAY, thickness);
    }

    /** Adds areas of one color without an outline. */
    Sketch areas(String path, String color) {
        return add(path, color, NONE, 0);
    }

    /** Adds areas of one color with an outline in ink. */
    Sketch outlined(String path, String color, int thickness) {
        return add(path, color, INK, thickness);
    }

    private Sketch add(String path, String fill, String stroke, int thickness) {
        if (!path.isEmpty()) {
            parts.add(new Drawn.Outline(path, fill, stroke, String.valueOf(thickness)));
        }
        return this;
    }

    /**
     * Adds a line of text.
     *
     * @param anchor which of its points is given: start, middle or end, on the base line
     */
    Sketch word(String text, int x, int y, String anchor) {
        words.add(new Drawn.Word(text, String.valueOf(x), String.valueOf(y), anchor, String.valueOf(LETTERS)));
        return this;
    }

    /** @param text for those who do not see it */
    Drawn drawn(String text) {
        return drawn(text, 1);
    }

    /** The same so many times as large. */
    Drawn drawn(String text, int times) {
        return new Drawn(text, "0 0 " + width + " " + height, millimeters(times * width), millimeters(times * height),
                parts, words);
    }

    private static String millimeters(int tenths) {
        return BigDecimal.valueOf(tenths, 1).toPlainString() + "mm";
    }

    /** A rectangle as steps of a path. */
    static String box(int left, int top, int wide, int high) {
        return "M" + left + " " + top + "H" + (left + wide) + "V" + (top + high) + "H" + left + "Z";
    }
}

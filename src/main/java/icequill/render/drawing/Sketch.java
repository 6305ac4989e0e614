package icequill.render.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A drawing in the making, ready for {@code parts/drawing.ftlh}. Its units are tenths of a millimeter.
 *
 * @param width of the drawing
 * @param height of the drawing
 */
record Sketch(int width, int height, List<Map<String, String>> parts) {

    /** The ink of our papers. */
    static final String INK = "#1a1a1a";
    static final String WHITE = "#ffffff";
    static final String GRAY = "#bbbbbb";
    private static final String NONE = "none";

    static Sketch of(int width, int height) {
        return new Sketch(width, height, new ArrayList<>());
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
            parts.add(Map.of("d", path, "fill", fill, "stroke", stroke, "line", String.valueOf(thickness)));
        }
        return this;
    }

    /** @param text for those who do not see it */
    Map<String, Object> model(String text) {
        return Map.of("text", text, "box", "0 0 " + width + " " + height, "width", millimeters(width), "height",
                millimeters(height), "parts", List.copyOf(parts));
    }

    private static String millimeters(int tenths) {
        return BigDecimal.valueOf(tenths, 1).toPlainString() + "mm";
    }

    /** A rectangle as steps of a path. */
    static String box(int left, int top, int wide, int high) {
        return "M" + left + " " + top + "H" + (left + wide) + "V" + (top + high) + "H" + left + "Z";
    }
}

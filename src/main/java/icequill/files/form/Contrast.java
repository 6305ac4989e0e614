package icequill.files.form;

import java.util.stream.IntStream;

/** How well a color is told from white (WCAG 2.2, contrast ratio and relative luminance). */
final class Contrast {

    /** Success criterion 1.4.3, for text of usual size. */
    static final double LEAST = 4.5;

    private static final int RED = 0xff0000;
    private static final int BITS = 8;
    private static final double[] WEIGHTS = {0.2126, 0.7152, 0.0722};
    private static final double GLARE = 0.05;

    private Contrast() {
    }

    /** @param color as {@code #rrggbb} */
    static double onWhite(String color) {
        int rgb = Integer.parseInt(color.substring(1), 16);
        double luminance = IntStream.range(0, WEIGHTS.length)
                .mapToDouble(i -> WEIGHTS[i] * linear((rgb & (RED >> (BITS * i))) >> (BITS * (2 - i)))).sum();
        return (1 + GLARE) / (luminance + GLARE);
    }

    private static double linear(int level) {
        double share = level / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}

package icequill.render.drawing;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the numbers that attributes of a drawing hold. */
final class Numbers {

    static final String NUMBER = "[-+]?(?:[0-9]*[.])?[0-9]+";

    private static final Pattern EACH = Pattern.compile(NUMBER);
    private static final Pattern LIST = Pattern.compile("[\\s,]*(?:" + NUMBER + "[\\s,]*)*");
    private static final Pattern MOVE = Pattern
            .compile("(translate|rotate|scale)\\(([^)]*)\\)");

    private Numbers() {
    }

    /** @throws IllegalArgumentException when it is no number */
    static float one(String text) {
        List<Float> all = of(text);
        if (all.size() != 1) {
            throw new IllegalArgumentException("svg: one number instead of \"" + text + "\"");
        }
        return all.getFirst();
    }

    /** @throws IllegalArgumentException when something else stands among them */
    static List<Float> of(String text) {
        if (!LIST.matcher(text).matches()) {
            throw new IllegalArgumentException("svg: numbers instead of \"" + text + "\"");
        }
        List<Float> numbers = new ArrayList<>();
        Matcher each = EACH.matcher(text);
        while (each.find()) {
            numbers.add(Float.valueOf(each.group()));
        }
        return numbers;
    }

    /** A {@code transform}: translations, turns about the origin and scales, one after another. */
    static AffineTransform transform(String text) {
        AffineTransform whole = new AffineTransform();
        Matcher move = MOVE.matcher(text);
        int end = 0;
        while (move.find()) {
            end = move.end();
            List<Float> numbers = of(move.group(2));
            float first = numbers.getFirst();
            switch (move.group(1)) {
            case "translate" -> whole.translate(first, numbers.size() > 1 ? numbers.get(1) : 0);
            case "rotate" -> whole.rotate(Math.toRadians(first));
            default -> whole.scale(first, numbers.size() > 1 ? numbers.get(1) : first);
            }
        }
        if (!text.substring(end).isBlank()) {
            throw new IllegalArgumentException("svg: no transform \"" + text + "\"");
        }
        return whole;
    }
}

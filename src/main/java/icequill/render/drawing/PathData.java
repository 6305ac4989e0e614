package icequill.render.drawing;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the outlines of shapes: the absolute commands M, L, H, V, C and Z of a path, and the corners of a polygon. */
final class PathData {

    private static final Pattern COMMAND = Pattern.compile("([A-Za-z])([^A-Za-z]*)");

    private final Path2D.Float path = new Path2D.Float();

    private PathData() {
    }

    /** @throws IllegalArgumentException for another command, or numbers that do not fit one */
    static Shape shape(String text) {
        PathData data = new PathData();
        Matcher command = COMMAND.matcher(text);
        while (command.find()) {
            data.command(command.group(1), Numbers.of(command.group(2)));
        }
        return data.path;
    }

    /** A line through points, joined to its beginning where it is closed. */
    static Shape through(String points, boolean closed) {
        PathData data = new PathData();
        data.command("M", Numbers.of(points));
        if (closed) {
            data.path.closePath();
        }
        return data.path;
    }

    private void command(String letter, List<Float> numbers) {
        int size = switch (letter) {
        case "M", "L" -> 2;
        case "H", "V" -> 1;
        case "C" -> 6;
        case "Z" -> 0;
        default -> throw new IllegalArgumentException("svg: no path command " + letter);
        };
        if (size == 0 ? !numbers.isEmpty() : numbers.isEmpty() || numbers.size() % size != 0) {
            throw new IllegalArgumentException("svg: path command " + letter + " with " + numbers);
        }
        if (size == 0) {
            path.closePath();
        }
        for (int i = 0; i < numbers.size(); i += size) {
            draw(i > 0 && letter.equals("M") ? "L" : letter, numbers.subList(i, i + size));
        }
    }

    private void draw(String letter, List<Float> n) {
        switch (letter) {
        case "M" -> path.moveTo(n.get(0), n.get(1));
        case "L" -> path.lineTo(n.get(0), n.get(1));
        case "H" -> path.lineTo(n.get(0), path.getCurrentPoint().getY());
        case "V" -> path.lineTo(path.getCurrentPoint().getX(), n.get(0));
        default -> path.curveTo(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5));
        }
    }
}

package icequill.render;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xhtmlrenderer.css.parser.FSColor;
import org.xhtmlrenderer.css.parser.FSRGBColor;

/**
 * Reads the part of SVG 1.1 that our papers draw with: {@code svg} with a {@code viewBox}, and {@code path} with the commands M, L,
 * H, V, C and Z in absolute coordinates, colors as six hexadecimal digits, and {@code stroke-width}.
 */
final class DrawingReader {

    private static final Pattern STEP = Pattern.compile("\\s*([MLHVCZ])([^A-Za-z]*)");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+([.][0-9]+)?");
    private static final Pattern COLOR = Pattern.compile("#[0-9a-fA-F]{6}");
    private static final int HEX = 16;

    private final Element svg;
    private final List<String> strange = new ArrayList<>();

    DrawingReader(Element svg) {
        this.svg = svg;
    }

    /** What is in it that we cannot draw, after it was read. */
    List<String> strange() {
        return List.copyOf(strange);
    }

    /** One as wide and high as it says itself, where the page does not say. */
    Drawing.Canvas canvas() {
        List<Double> box = numbers(svg.getAttribute("viewBox"));
        if (box.size() != 4 || box.get(2) <= 0 || box.get(3) <= 0) {
            strange.add("an svg without a viewBox of four numbers");
            return new Drawing.Canvas(0, 0, 1, 1);
        }
        return new Drawing.Canvas(box.get(0), box.get(1), box.get(2), box.get(3));
    }

    List<Drawing.Part> parts() {
        List<Drawing.Part> parts = new ArrayList<>();
        NodeList children = svg.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            Node child = children.item(i);
            if (child instanceof Element element && element.getNodeName().equals("path")) {
                parts.add(part(element));
            } else if (child instanceof Element element) {
                strange.add("<" + element.getNodeName() + "> in an svg");
            }
        }
        return parts;
    }

    private Drawing.Part part(Element path) {
        String width = path.getAttribute("stroke-width");
        List<Double> line = numbers(width);
        return new Drawing.Part(path(path.getAttribute("d")), color(path.getAttribute("fill")),
                color(path.getAttribute("stroke")), line.isEmpty() ? 1 : line.getFirst());
    }

    private Optional<FSColor> color(String text) {
        if (text.isEmpty() || text.equals("none")) {
            return Optional.empty();
        }
        if (!COLOR.matcher(text).matches()) {
            strange.add("the color " + text);
            return Optional.empty();
        }
        return Optional.of(new FSRGBColor(Integer.parseInt(text.substring(1), HEX)));
    }

    private Path2D path(String text) {
        Path2D path = new Path2D.Double();
        Matcher steps = STEP.matcher(text);
        int end = 0;
        while (steps.find() && steps.start() == end) {
            if (!step(path, steps.group(1).charAt(0), numbers(steps.group(2)))) {
                break;
            }
            end = steps.end();
        }
        if (!text.substring(end).isBlank()) {
            strange.add("the path " + text.substring(end).strip());
        }
        return path;
    }

    /** Adds a step, once or over and over as it has numbers; false where it has the wrong number of them. */
    private static boolean step(Path2D path, char command, List<Double> numbers) {
        int each = switch (command) {
        case 'M', 'L' -> 2;
        case 'H', 'V' -> 1;
        case 'C' -> 6;
        default -> 0;
        };
        boolean begins = path.getCurrentPoint() == null;
        boolean counted = each == 0 ? numbers.isEmpty() : !numbers.isEmpty() && numbers.size() % each == 0;
        if (!counted || (begins && command != 'M')) {
            return false;
        }
        if (each == 0) {
            path.closePath();
        }
        for (int i = 0; i < numbers.size(); i += each) {
            add(path, i > 0 && command == 'M' ? 'L' : command, numbers.subList(i, i + each));
        }
        return true;
    }

    private static void add(Path2D path, char command, List<Double> numbers) {
        switch (command) {
        case 'M' -> path.moveTo(numbers.get(0), numbers.get(1));
        case 'L' -> path.lineTo(numbers.get(0), numbers.get(1));
        case 'H' -> path.lineTo(numbers.get(0), path.getCurrentPoint().getY());
        case 'V' -> path.lineTo(path.getCurrentPoint().getX(), numbers.get(0));
        default -> path.curveTo(numbers.get(0), numbers.get(1), numbers.get(2), numbers.get(3), numbers.get(4),
                numbers.get(5));
        }
    }

    private static List<Double> numbers(String text) {
        return NUMBER.matcher(text).results().map(found -> Double.valueOf(found.group())).toList();
    }
}

package icequill.render.drawing;

import icequill.render.drawing.Drawing.Anchor;
import icequill.render.drawing.Drawing.Line;
import icequill.render.drawing.Drawing.Mark;
import icequill.render.drawing.Drawing.Outline;
import icequill.render.drawing.Drawing.Words;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Reads a drawing from an {@code svg} element of a page: rect, circle, ellipse, line, polyline, polygon, path, text and g, with plain
 * attributes. What it does not know is an error, so that nothing is silently left out of a paper.
 */
final class DrawingReader {

    private static final Set<String> SILENT = Set.of("title", "desc");

    private final List<Mark> marks = new ArrayList<>();

    private DrawingReader() {
    }

    /** @throws IllegalArgumentException for what cannot be drawn */
    static Drawing read(Element svg) {
        List<Float> box = Numbers.of(svg.getAttribute("viewBox"));
        if (box.size() != 4 || box.get(2) <= 0 || box.get(3) <= 0) {
            throw new IllegalArgumentException("svg: viewBox wants four numbers, as in \"0 0 170 40\"");
        }
        DrawingReader reader = new DrawingReader();
        reader.children(svg, new AffineTransform());
        return new Drawing(new Rectangle2D.Float(box.get(0), box.get(1), box.get(2), box.get(3)), reader.marks);
    }

    private void children(Element parent, AffineTransform placed) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element && !SILENT.contains(element.getNodeName())) {
                read(element, placed);
            }
        }
    }

    private void read(Element element, AffineTransform outer) {
        AffineTransform placed = new AffineTransform(outer);
        placed.concatenate(Numbers.transform(element.getAttribute("transform")));
        switch (element.getNodeName()) {
        case "g" -> children(element, placed);
        case "text" -> words(element, placed);
        case "rect" -> outline(element, rectangle(element), placed);
        case "circle" -> outline(element, ellipse(element, number(element, "r"), number(element, "r")), placed);
        case "ellipse" -> outline(element, ellipse(element, number(element, "rx"), number(element, "ry")), placed);
        case "line" -> outline(element, new Line2D.Float(number(element, "x1"), number(element, "y1"),
                number(element, "x2"), number(element, "y2")), placed);
        case "polyline" -> outline(element, PathData.through(element.getAttribute("points"), false), placed);
        case "polygon" -> outline(element, PathData.through(element.getAttribute("points"), true), placed);
        case "path" -> outline(element, PathData.shape(element.getAttribute("d")), placed);
        default -> throw new IllegalArgumentException("svg: no element " + element.getNodeName());
        }
    }

    private static Shape rectangle(Element element) {
        float x = number(element, "x");
        float y = number(element, "y");
        float width = number(element, "width");
        float height = number(element, "height");
        float round = 2 * number(element, "rx");
        return round > 0
                ? new RoundRectangle2D.Float(x, y, width, height, round, round)
                : new Rectangle2D.Float(x, y, width, height);
    }

    private static Shape ellipse(Element element, float across, float down) {
        return new Ellipse2D.Float(number(element, "cx") - across, number(element, "cy") - down, 2 * across, 2 * down);
    }

    private void outline(Element element, Shape shape, AffineTransform placed) {
        Optional<Line> line = color(element, "stroke", "none").map(color -> new Line(color,
                Numbers.one(inherited(element, "stroke-width").orElse("1")),
                inherited(element, "stroke-dasharray").map(Numbers::of).orElse(List.of())));
        marks.add(new Outline(placed.createTransformedShape(shape), color(element, "fill", "#000000"), line));
    }

    private void words(Element element, AffineTransform placed) {
        Point2D at = placed.transform(new Point2D.Float(number(element, "x"), number(element, "y")), null);
        Anchor anchor = Anchor.valueOf(inherited(element, "text-anchor").orElse("start").toUpperCase(Locale.ROOT));
        color(element, "fill", "#000000").ifPresent(color -> marks.add(new Words(
                element.getTextContent().strip(), color, Numbers.one(inherited(element, "font-size").orElse("10")),
                inherited(element, "font-weight").filter("bold"::equals).isPresent(), anchor, at)));
    }

    private static float number(Element element, String name) {
        return element.hasAttribute(name) ? Numbers.one(element.getAttribute(name)) : 0;
    }

    private static Optional<Color> color(Element element, String name, String usual) {
        String text = inherited(element, name).orElse(usual);
        return text.equals("none") ? Optional.empty() : Optional.of(Color.decode(text));
    }

    /** What the element says, or the nearest around it. */
    private static Optional<String> inherited(Element element, String name) {
        return Stream.<Node>iterate(element, node -> node instanceof Element, Node::getParentNode)
                .map(Element.class::cast).filter(around -> around.hasAttribute(name)).findFirst()
                .map(around -> around.getAttribute(name));
    }
}

package icequill.render.drawing;

import icequill.problem.Check;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/**
 * A picture made of shapes and words, so that it stays sharp at any size: the part of SVG 1.1 (W3C) that charts and plain
 * drawings need.
 *
 * @param view the part of the plane that is seen
 * @param marks from the one below to the one on top
 */
record Drawing(Rectangle2D view, List<Mark> marks) {

    /** Something drawn. */
    sealed interface Mark {}

    /** A shape; without fill and line it is not seen. */
    record Outline(Shape shape, Optional<Color> fill, Optional<Line> line) implements Mark {}

    /**
     * How a line looks.
     *
     * @param width in units of the view
     * @param dashes lengths of dashes and gaps in turn; empty for an unbroken line
     */
    record Line(Color color, float width, List<Float> dashes) {}

    /**
     * A line of text.
     *
     * @param size of the letters, in units of the view
     * @param at where it starts, is in the middle or ends, on the base line
     */
    record Words(String text, Color color, float size, boolean bold, Anchor anchor, Point2D at)
            implements
            Mark {}

    /** Which point of a text is given. */
    enum Anchor {
        START, MIDDLE, END
    }

    Drawing {
        marks = List.copyOf(marks);
        Check.that(!view.isEmpty(), "nothing is seen");
    }
}

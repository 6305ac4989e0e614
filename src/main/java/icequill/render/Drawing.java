package icequill.render;

import java.awt.BasicStroke;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.css.parser.FSColor;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElement;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** A drawing of lines and areas, set as such and not as dots, so that it is sharp at any size. */
final class Drawing implements ITextReplacedElement {

    private final Canvas canvas;
    private final List<Part> parts;
    private final int width;
    private final int height;
    private Point location = new Point(0, 0);

    /** What a drawing's own units count, from its upper left corner. */
    record Canvas(double left, double top, double width, double height) {}

    /**
     * A line or area.
     *
     * @param line width of the line in the drawing's own units
     */
    record Part(Path2D path, Optional<FSColor> fill, Optional<FSColor> stroke, double line) {}

    /** A drawing on a page, its width and height in the renderer's dots. */
    Drawing(Canvas canvas, List<Part> parts, int width, int height) {
        this.canvas = canvas;
        this.parts = List.copyOf(parts);
        this.width = width;
        this.height = height;
    }

    @Override
    public void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
        Rectangle area = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
        double scale = Math.min(area.width / canvas.width(), area.height / canvas.height());
        AffineTransform place = new AffineTransform(scale, 0, 0, scale, area.x - scale * canvas.left(),
                area.y - scale * canvas.top());
        Stroke before = device.getStroke();
        for (Part part : parts) {
            part.fill().ifPresent(color -> {
                device.setColor(color);
                device.fill(part.path().createTransformedShape(place));
            });
            part.stroke().ifPresent(color -> {
                device.setColor(color);
                device.setStroke(new BasicStroke((float) (part.line() * scale), BasicStroke.CAP_ROUND,
                        BasicStroke.JOIN_ROUND));
                device.draw(part.path().createTransformedShape(place));
            });
        }
        device.setStroke(before);
    }

    @Override
    public int getIntrinsicWidth() {
        return width;
    }

    @Override
    public int getIntrinsicHeight() {
        return height;
    }

    @Override
    public Point getLocation() {
        return location;
    }

    @Override
    public void setLocation(int x, int y) {
        location = new Point(x, y);
    }

    @Override
    public void detach(@Nullable LayoutContext context) {
        // It holds nothing of the page.
    }

    @Override
    public boolean isRequiresInteractivePaint() {
        return false;
    }

    @Override
    public boolean hasBaseline() {
        return false;
    }

    @Override
    public int getBaseline() {
        return 0;
    }
}

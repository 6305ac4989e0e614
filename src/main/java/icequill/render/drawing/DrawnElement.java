package icequill.render.drawing;

import icequill.render.words.Family;
import java.awt.Point;
import java.util.Objects;
import java.util.Optional;
import org.openpdf.text.pdf.BaseFont;
import org.xhtmlrenderer.css.constants.IdentValue;
import org.xhtmlrenderer.css.value.FontSpecification;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElement;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** A drawing in its place on a page. */
final class DrawnElement implements ITextReplacedElement {

    private final Drawing drawing;
    private final int width;
    private final int height;
    private Point location = new Point();

    /**
     * Placed by the renderer.
     *
     * @param width in dots of the device
     * @param height in dots of the device
     */
    DrawnElement(Drawing drawing, int width, int height) {
        this.drawing = drawing;
        this.width = width;
        this.height = height;
    }

    @Override
    public void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
        new DrawingPainter(Optional.ofNullable(device.getCurrentPage()).orElseThrow(),
                (family, bold) -> face(context, family, bold))
                .draw(drawing, device.createLocalTargetArea(context, box));
    }

    private static BaseFont face(RenderingContext context, Family family, boolean bold) {
        FontSpecification wanted = new FontSpecification(1, bold ? IdentValue.BOLD : IdentValue.NORMAL,
                new String[]{family.style()}, IdentValue.NORMAL, IdentValue.NORMAL);
        ITextFSFont font = (ITextFSFont) Objects.requireNonNull(context.getFont(wanted));
        return font.getFontDescription().getFont();
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
    public void detach(LayoutContext context) {
        // nothing is held
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

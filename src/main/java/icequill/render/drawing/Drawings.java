package icequill.render.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElementFactory;
import org.xhtmlrenderer.render.BlockBox;

/** Gives each {@code svg} element of a page its place and its drawing, and leaves other elements to the renderer. */
public final class Drawings extends ITextReplacedElementFactory {

    public static final String ELEMENT = "svg";
    public static final String ALLOWED = "rect, circle, ellipse, line, polyline, polygon, path (M L H V C Z), text, g; "
            + "colors as #rrggbb or none; transform: translate, rotate, scale";

    private final List<String> refused = new ArrayList<>();

    public Drawings(ITextOutputDevice device) {
        super(device);
    }

    /** What could not be drawn. */
    public List<String> refused() {
        return List.copyOf(refused);
    }

    @Override
    public @Nullable ReplacedElement createReplacedElement(LayoutContext context, BlockBox box,
            UserAgentCallback callback, int cssWidth, int cssHeight) {
        Element element = box.getElement();
        if (element == null || !element.getNodeName().equals(ELEMENT)) {
            return super.createReplacedElement(context, box, callback, cssWidth, cssHeight);
        }
        try {
            Drawing drawing = DrawingReader.read(element);
            int dots = context.getDotsPerPixel();
            return new DrawnElement(drawing, cssWidth > 0 ? cssWidth : dots * (int) drawing.view().getWidth(),
                    cssHeight > 0 ? cssHeight : dots * (int) drawing.view().getHeight());
        } catch (IllegalArgumentException unknown) {
            refused.add(String.valueOf(unknown.getMessage()));
            return null;
        }
    }
}

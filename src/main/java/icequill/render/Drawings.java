package icequill.render;

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

/** Sets {@code svg} elements as drawings, and all else as the renderer does. What cannot be drawn is kept, to be reported. */
final class Drawings extends ITextReplacedElementFactory {

    private final List<String> strange = new ArrayList<>();

    Drawings(ITextOutputDevice device) {
        super(device);
    }

    List<String> strange() {
        return List.copyOf(strange);
    }

    @Override
    public @Nullable ReplacedElement createReplacedElement(LayoutContext context, BlockBox box, UserAgentCallback files,
            int width, int height) {
        Element element = box.getElement();
        if (element == null || !element.getNodeName().equals("svg")) {
            return super.createReplacedElement(context, box, files, width, height);
        }
        DrawingReader reader = new DrawingReader(element);
        Drawing.Canvas canvas = reader.canvas();
        List<Drawing.Part> parts = reader.parts();
        strange.addAll(reader.strange());
        int wide = width > 0 ? width : (int) (canvas.width() * context.getDotsPerPixel());
        int high = height > 0 ? height : (int) (wide * canvas.height() / canvas.width());
        return new Drawing(canvas, parts, wide, high);
    }
}

package icequill.render.pdf;

import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.xhtmlrenderer.simple.extend.XhtmlNamespaceHandler;

/** Keeps the renderer from making links, which no screen reader would find; {@link TaggedDevice} makes them. */
final class OwnLinks extends XhtmlNamespaceHandler {

    @Override
    public @Nullable String getLinkUri(Element element) {
        return null;
    }
}

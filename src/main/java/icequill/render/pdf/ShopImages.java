package icequill.render.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.pdf.ITextUserAgent;

/**
 * Serves the pictures that lie in the shop folder itself, by bare name, and nothing else of anyone's: no other folder, no address, no
 * style sheet. What was asked for beyond that is kept, to be reported.
 */
final class ShopImages extends ITextUserAgent {

    /** The renderer's built-in style of HTML elements, which it asks for like any other file. */
    private static final String STYLE_RESOURCE = "/resources/css/XhtmlNamespaceHandler.css";
    private static final String OWN_STYLE = String.valueOf(ITextRenderer.class.getResource(STYLE_RESOURCE));

    private final Path shop;
    private final List<String> refused = new ArrayList<>();

    ShopImages(Path shop, ITextOutputDevice device) {
        super(device, ITextRenderer.DEFAULT_DOTS_PER_PIXEL);
        this.shop = shop;
    }

    List<String> refused() {
        return List.copyOf(refused);
    }

    @Override
    public @Nullable String resolveURI(@Nullable String uri) {
        if (uri == null || uri.isEmpty()) {
            return null;
        }
        if (uri.equals(OWN_STYLE)) {
            return uri;
        }
        if (uri.matches("[A-Za-z0-9_-]+[.](png|jpg|jpeg)") && Files.isRegularFile(shop.resolve(uri))) {
            return uri;
        }
        refused.add(uri);
        return null;
    }

    @Override
    protected @Nullable InputStream resolveAndOpenStream(@Nullable String uri) {
        String allowed = resolveURI(uri);
        if (allowed == null) {
            return null;
        }
        if (allowed.equals(OWN_STYLE)) {
            return ITextRenderer.class.getResourceAsStream(STYLE_RESOURCE);
        }
        try {
            return new ByteArrayInputStream(Picture.of(shop.resolve(allowed)).png());
        } catch (IOException unreadable) {
            refused.add(allowed);
            return null;
        }
    }
}

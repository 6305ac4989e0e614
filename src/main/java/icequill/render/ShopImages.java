package icequill.render;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.pdf.ITextUserAgent;

/**
 * Serves the pictures that lie in the shop folder itself, by bare name, and nothing else of anyone's: no other folder, no address, no
 * style sheet. What was asked for beyond that is kept, to be reported.
 */
final class ShopImages extends ITextUserAgent {

    private static final int MOST_PIXELS_WIDE = 1200;
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
            return new ByteArrayInputStream(opaque(allowed));
        } catch (IOException unreadable) {
            refused.add(allowed);
            return null;
        }
    }

    /** Archives take no transparency, and no printer needs more pixels. */
    private byte[] opaque(String name) throws IOException {
        BufferedImage image = ImageIO.read(shop.resolve(name).toFile());
        if (image == null) {
            throw new IOException("not a picture: " + name);
        }
        double scale = Math.min(1, (double) MOST_PIXELS_WIDE / image.getWidth());
        int width = Math.max(1, (int) (image.getWidth() * scale));
        int height = Math.max(1, (int) (image.getHeight() * scale));
        BufferedImage flat = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = flat.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        graphics.drawImage(image, 0, 0, width, height, null);
        graphics.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(flat, "png", bytes);
        return bytes.toByteArray();
    }
}
